package bedledger.projections.compost;

import bedledger.projections.estimate.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The mixing equations of the Cornell Waste Management Institute, over parts of four figures for each ingredient: Q (kg fresh), M
 * (water of fresh), C and N (of dry).
 *
 * <p>G = ΣQM / ΣQ and R = ΣQC(1−M) / ΣQN(1−M); and both solved for the Q of the last ingredient. Source:
 * compost.css.cornell.edu/calc/2.html (structure of both equations).
 */
final class Mixing {
    static final String WATER = "mixing equation for moisture (Cornell Waste Management Institute)";
    static final String RATIO = "mixing equation for C:N (Cornell Waste Management Institute)";
    private static final int FIGURES = 4;
    private static final double NOTHING = 1e-9;

    /** The four figures of each; empty where one of them is not known. */
    static Optional<List<Estimate>> parts(List<Ingredient> ingredients) {
        return ingredients.stream().allMatch(each -> each.missing().isEmpty())
                ? Optional.of(ingredients.stream().flatMap(Mixing::figures).toList())
                : Optional.empty();
    }

    private static Stream<Estimate> figures(Ingredient of) {
        return Stream.of(of.kilograms(), of.water(), of.carbon(), of.nitrogen()).flatMap(Optional::stream);
    }

    static double mass(double[] parts) {
        double sum = 0;
        for (int at = 0; at < parts.length; at += FIGURES) {
            sum += parts[at];
        }
        return sum;
    }

    static double water(double[] parts) {
        double water = 0;
        for (int at = 0; at < parts.length; at += FIGURES) {
            water += parts[at] * parts[at + 1];
        }
        return water / mass(parts);
    }

    static double ratio(double[] parts) {
        double carbon = 0;
        double nitrogen = 0;
        for (int at = 0; at < parts.length; at += FIGURES) {
            double dry = parts[at] * (1 - parts[at + 1]);
            carbon += dry * parts[at + 2];
            nitrogen += dry * parts[at + 3];
        }
        return nitrogen > 0 ? carbon / nitrogen : Double.NaN;
    }

    /** How much of the last ingredient makes water the goal; no number where none does. */
    static double massForWater(double[] parts, double goal) {
        double lacking = 0;
        for (int at = 0; at < parts.length - FIGURES; at += FIGURES) {
            lacking += parts[at] * (goal - parts[at + 1]);
        }
        return positive(lacking / (parts[parts.length - FIGURES + 1] - goal), parts);
    }

    /** How much of the last ingredient makes C:N the goal; no number where none does. */
    static double massForRatio(double[] parts, double goal) {
        double lacking = 0;
        for (int at = 0; at < parts.length - FIGURES; at += FIGURES) {
            lacking += parts[at] * (1 - parts[at + 1]) * (goal * parts[at + 3] - parts[at + 2]);
        }
        int last = parts.length - FIGURES;
        return positive(lacking / ((1 - parts[last + 1]) * (parts[last + 2] - goal * parts[last + 3])), parts);
    }

    /** What is already at the goal may come out a rounding below nothing. */
    private static double positive(double mass, double[] parts) {
        boolean nothing = Math.abs(mass) <= NOTHING * mass(parts);
        return nothing ? 0 : Double.isFinite(mass) && mass >= 0 ? mass : Double.NaN;
    }

    private Mixing() {}
}

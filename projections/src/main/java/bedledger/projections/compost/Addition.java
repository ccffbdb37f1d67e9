package bedledger.projections.compost;

import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How much of one more ingredient brings a mix to a goal.
 *
 * @param wanted in the unit of the goal
 * @param more the ingredient whose amount is asked for
 * @param kilograms fresh; empty where no amount does it, or something is missing
 * @param mix what comes out with the best value of that amount, taken as weighed
 * @param none why there is no amount; empty where there is one
 */
public record Addition(
        Goal goal,
        double wanted,
        Ingredient more,
        Optional<Estimate> kilograms,
        Optional<Blend> mix,
        Optional<String> none) {

    /** Asks how much of an ingredient, whatever amount it was said with, brings the mix to the goal. */
    public static Addition to(Goal goal, double wanted, Blend mix, Ingredient more) {
        Ingredient unweighed = more.weighing(Estimate.exact(0, "kg"));
        List<String> missing = Stream.concat(mix.missing().stream(), unweighed.missing().stream())
                .toList();
        if (!missing.isEmpty()) {
            return none(goal, wanted, more, "incomplete: " + String.join(", ", missing));
        }
        List<Ingredient> all =
                Stream.concat(mix.ingredients().stream(), Stream.of(unweighed)).toList();
        List<Estimate> figures = Mixing.parts(all).orElseThrow();
        double best = solve(goal, figures.stream().mapToDouble(Estimate::best).toArray(), wanted);
        if (!Double.isFinite(best)) {
            return none(goal, wanted, more, apart(goal, mix, more));
        }
        Estimate kilograms = Derived.parts(figures)
                .by(goal == Goal.WATER ? Mixing.WATER : Mixing.RATIO)
                .work("kg", parts -> solve(goal, parts, wanted))
                .clippedAtZero();
        return new Addition(
                goal,
                wanted,
                more,
                Optional.of(kilograms),
                Optional.of(mix.with(more.weighing(Estimate.exact(best, "kg")))),
                Optional.empty());
    }

    private static double solve(Goal goal, double[] parts, double wanted) {
        return goal == Goal.WATER ? Mixing.massForWater(parts, wanted) : Mixing.massForRatio(parts, wanted);
    }

    private static Addition none(Goal goal, double wanted, Ingredient more, String why) {
        return new Addition(goal, wanted, more, Optional.empty(), Optional.empty(), Optional.of(why));
    }

    private static String apart(Goal goal, Blend mix, Ingredient more) {
        return goal == Goal.WATER
                ? "no amount does it: the goal does not lie between the water of the mix, " + percent(mix.water())
                        + ", and that of " + more.name() + ", " + percent(more.water())
                : "no amount does it: the goal does not lie between the C:N of the mix, "
                        + ratio(mix.carbonToNitrogen()) + ", and that of " + more.name() + ", "
                        + ratio(more.carbonToNitrogen());
    }

    private static String percent(Optional<Estimate> share) {
        return share.map(each -> each.times(100).inWords().replaceFirst(" kg/kg", " %"))
                .orElse("not known");
    }

    private static String ratio(Optional<Estimate> ratio) {
        return ratio.map(Estimate::inWords).orElse("none, for it holds no nitrogen");
    }
}

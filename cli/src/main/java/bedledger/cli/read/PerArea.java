package bedledger.cli.read;

import bedledger.language.Unit;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Measure;
import java.util.Locale;
import java.util.Optional;

/**
 * Masses over the bed tops in the book's unit.
 *
 * @param unit such as t/ha
 * @param times how many of it are one kg/m²
 * @param decimals shown, the same for every figure, so that a column can be read down
 */
public record PerArea(String unit, double times, int decimals) {
    /** t/ha, for nitrogen and phosphorus kg/ha; lb/acre in a book that keeps US units. */
    public static PerArea of(ReadBook book, Measure measure) {
        boolean nutrient = measure == Measure.NITROGEN || measure == Measure.PHOSPHORUS;
        if (book.opened().units().equals("us")) {
            double gramsInAPound = Unit.LB.factor().doubleValue();
            return new PerArea("lb/acre", Unit.ACRE.factor().doubleValue() * 1000 / gramsInAPound, nutrient ? 1 : 0);
        }
        double squareMetres = Unit.HA.factor().doubleValue();
        return nutrient ? new PerArea("kg/ha", squareMetres, 1) : new PerArea("t/ha", squareMetres / 1000, 2);
    }

    /** The best value of an estimate in kg/m². */
    public double of(Estimate perSquareMetre) {
        return perSquareMetre.best() * times;
    }

    /** A value in this unit, in words; what rounds to nothing and is not nothing shows as less than the last decimal. */
    public String words(double value) {
        String words = String.format(Locale.ROOT, "%." + decimals + "f", value);
        double least = Math.pow(10, -decimals);
        return value > 0 && value < least / 2 ? "<" + String.format(Locale.ROOT, "%." + decimals + "f", least) : words;
    }

    /** Its best value in words; a dash where nothing is known. */
    public String best(Optional<Estimate> perSquareMetre) {
        return perSquareMetre.map(each -> words(of(each))).orElse("–");
    }

    public String low(Estimate perSquareMetre) {
        return perSquareMetre.hasBand() ? words(perSquareMetre.low() * times) : "none known";
    }

    public String high(Estimate perSquareMetre) {
        return perSquareMetre.hasBand() ? words(perSquareMetre.high() * times) : "none known";
    }

    /** "13.41 (11.90–14.87)", with a dagger where some coefficient in it has no known range. */
    public String band(Estimate perSquareMetre) {
        String best = words(of(perSquareMetre));
        String range = perSquareMetre.hasBand() ? " (" + low(perSquareMetre) + "–" + high(perSquareMetre) + ")" : "";
        return best + range + (perSquareMetre.rangeUnknownFor().isEmpty() ? "" : "†");
    }
}

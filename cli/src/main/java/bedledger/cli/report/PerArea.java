package bedledger.cli.report;

import bedledger.cli.read.Figure;
import bedledger.cli.read.ReadBook;
import bedledger.language.Unit;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Measure;
import java.util.Optional;

/**
 * Masses over the bed tops in the book's unit.
 *
 * @param unit such as t/ha
 * @param times how many of it are one kg/m²
 */
public record PerArea(String unit, double times) {
    /** t/ha, for nitrogen and phosphorus kg/ha; lb/acre in a book that keeps US units. */
    public static PerArea of(ReadBook book, Measure measure) {
        if (book.opened().units().equals("us")) {
            double gramsInAPound = Unit.LB.factor().doubleValue();
            return new PerArea("lb/acre", Unit.ACRE.factor().doubleValue() * 1000 / gramsInAPound);
        }
        double kilograms = Unit.HA.factor().doubleValue();
        return measure == Measure.NITROGEN || measure == Measure.PHOSPHORUS
                ? new PerArea("kg/ha", kilograms)
                : new PerArea("t/ha", kilograms / 1000);
    }

    /** The best value of an estimate in kg/m². */
    public double of(Estimate perSquareMetre) {
        return perSquareMetre.best() * times;
    }

    /** Its best value in words; a dash where there is nothing known. */
    public String best(Optional<Estimate> perSquareMetre) {
        return perSquareMetre.map(each -> Figure.short3(of(each))).orElse("–");
    }

    String low(Estimate perSquareMetre) {
        return perSquareMetre.hasBand() ? Figure.short3(perSquareMetre.low() * times) : "no range known";
    }

    String high(Estimate perSquareMetre) {
        return perSquareMetre.hasBand() ? Figure.short3(perSquareMetre.high() * times) : "no range known";
    }
}

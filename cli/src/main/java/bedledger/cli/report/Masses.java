package bedledger.cli.report;

import bedledger.cli.read.Figure;
import bedledger.cli.read.ReadBook;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Sum;
import java.util.List;
import java.util.Optional;

/** Masses in the book's unit: figures worked out in kg, shown in kg or lb. */
record Masses(String unit, double kilograms) {
    static Masses of(ReadBook book) {
        return new Masses(book.massUnit().name(), book.massUnit().kilograms());
    }

    /** Low, best and high, a cell each. */
    List<Cell> cells(Optional<Estimate> estimate) {
        if (estimate.isEmpty()) {
            return List.of(Cell.of(""), Cell.of("not known"), Cell.of(""));
        }
        Estimate known = estimate.get();
        String best = Figure.short3(known.best() / kilograms) + dagger(known);
        if (!known.hasBand()) {
            String why = known.deviations().isEmpty() ? "as recorded" : "no range known";
            return List.of(Cell.of(why), Cell.number(best), Cell.of(why));
        }
        return List.of(
                Cell.number(Figure.short3(known.low() / kilograms)),
                Cell.number(best),
                Cell.number(Figure.short3(known.high() / kilograms)));
    }

    /** "2.91 (0.54 to 5.71)", or what is not known. */
    String words(Sum sum) {
        if (sum.pieces() == 0) {
            return "nothing";
        }
        String known = sum.known().map(this::words).orElse("not known");
        return sum.isComplete() ? known : known + "; not known for " + sum.unknown() + " of " + sum.pieces();
    }

    String words(Estimate estimate) {
        return band(estimate, kilograms);
    }

    /** A ratio, such as C:N. */
    static String ratio(Optional<Estimate> ratio) {
        return ratio.map(known -> band(known, 1)).orElse("not known");
    }

    private static String band(Estimate estimate, double by) {
        String best = Figure.short3(estimate.best() / by);
        return estimate.hasBand()
                ? best + " (" + Figure.short3(estimate.low() / by) + " to " + Figure.short3(estimate.high() / by) + ")"
                        + dagger(estimate)
                : best + (estimate.deviations().isEmpty() ? "" : " (no range known)");
    }

    /** A mark on a figure with a band that leaves out a coefficient nobody gives a range for. */
    static String dagger(Estimate estimate) {
        return estimate.hasBand() && !estimate.rangeUnknownFor().isEmpty() ? "†" : "";
    }
}

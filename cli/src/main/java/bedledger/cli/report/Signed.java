package bedledger.cli.report;

import bedledger.cli.chart.RangeMark;
import bedledger.cli.read.PerArea;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Sum;
import java.util.List;
import java.util.Optional;

/** Figures that may lie below nothing, with a true minus and "to" between the ends. */
record Signed(PerArea unit) {
    String words(double value) {
        String size = unit.words(Math.abs(value));
        if (value >= 0 || size.matches("[0.]*")) {
            return size;
        }
        return size.startsWith("<") ? "0" : "−" + size;
    }

    /** "3.1 (−2.0 to 4.8)", with a dagger where some coefficient in it has no known range. */
    String band(Estimate estimate) {
        double times = unit.times();
        return words(estimate.best() * times)
                + (estimate.hasBand()
                        ? " (" + words(estimate.low() * times) + " to " + words(estimate.high() * times) + ")"
                        : "")
                + (estimate.rangeUnknownFor().isEmpty() ? "" : "†");
    }

    /** The same of a sum over an area; what is not known is said, never left out. */
    Cell cell(Sum sum, Optional<Estimate> perSquareMetre) {
        if (sum.pieces() == 0) {
            return Cell.number("–");
        }
        return Cell.number(perSquareMetre
                .map(each -> band(each) + (sum.isComplete() ? "" : " + ?"))
                .orElse("not known"));
    }

    /** The marks of a chart in words. */
    String words(List<RangeMark> marks) {
        return String.join(
                ", ",
                marks.stream()
                        .map(mark -> mark.swatch().letter() + " " + words(mark.best())
                                + (mark.low().isPresent()
                                        ? " (" + words(mark.low().getAsDouble()) + " to "
                                                + words(mark.high().orElseThrow()) + ")"
                                        : "")
                                + (mark.incomplete() ? " and more that is not known" : ""))
                        .toList());
    }

    /** Low, best and high as data, in the unit; empty cells where it is not known. */
    List<String> data(Optional<Estimate> figure) {
        return figure.map(each -> List.of(
                        each.hasBand() ? Double.toString(each.low() * unit.times()) : "",
                        Double.toString(each.best() * unit.times()),
                        each.hasBand() ? Double.toString(each.high() * unit.times()) : ""))
                .orElse(List.of("", "", ""));
    }

    static List<String> three(String name) {
        return List.of(name + "_low", name + "_best", name + "_high");
    }
}

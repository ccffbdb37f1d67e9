package bedledger.cli.read;

import bedledger.projections.estimate.Estimate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A figure as JSON: three numbers, the unit, the equation it was come by, the tables and entries behind it. */
record Sourced(
        double low,
        double best,
        double high,
        String unit,
        List<String> methods,
        List<String> sources,
        List<String> rangeUnknownFor,
        List<Long> entries) {
    static Sourced of(Estimate estimate) {
        return new Sourced(
                estimate.low(),
                estimate.best(),
                estimate.high(),
                estimate.unit(),
                List.copyOf(estimate.grounds().methods()),
                estimate.grounds().citations().stream().map(Object::toString).toList(),
                List.copyOf(estimate.rangeUnknownFor()),
                List.copyOf(estimate.grounds().entries()));
    }

    static @Nullable Sourced orNull(Optional<Estimate> estimate) {
        return estimate.map(Sourced::of).orElse(null);
    }

    /** Low, best and high for CSV; empty cells for what is not known. */
    static List<String> cells(@Nullable Sourced figure) {
        return figure == null
                ? List.of("", "", "")
                : List.of(
                        Double.toString(figure.low()), Double.toString(figure.best()), Double.toString(figure.high()));
    }
}

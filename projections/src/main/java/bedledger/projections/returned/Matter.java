package bedledger.projections.returned;

import bedledger.projections.estimate.Estimate;
import java.util.Collection;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Fresh and dry mass, carbon, nitrogen and phosphorus (P), kg, and C:N; empty where it cannot be worked out. */
public record Matter(
        Optional<Estimate> fresh,
        Optional<Estimate> dry,
        Optional<Estimate> carbon,
        Optional<Estimate> nitrogen,
        Optional<Estimate> phosphorus,
        Optional<Estimate> carbonToNitrogen) {
    static final Matter UNKNOWN = new Matter(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public Optional<Estimate> get(Measure measure) {
        return switch (measure) {
            case FRESH -> fresh;
            case DRY -> dry;
            case CARBON -> carbon;
            case NITROGEN -> nitrogen;
            case PHOSPHORUS -> phosphorus;
        };
    }

    /** So much of it, its C:N unchanged. */
    Matter times(double share) {
        Matter part = each(estimate -> estimate.times(share));
        return new Matter(part.fresh, part.dry, part.carbon, part.nitrogen, part.phosphorus, carbonToNitrogen);
    }

    Matter behind(Collection<Long> entries) {
        return each(estimate -> estimate.behind(entries));
    }

    private Matter each(UnaryOperator<Estimate> change) {
        return new Matter(
                fresh.map(change),
                dry.map(change),
                carbon.map(change),
                nitrogen.map(change),
                phosphorus.map(change),
                carbonToNitrogen.map(change));
    }

    Stream<Estimate> estimates() {
        return Stream.of(fresh, dry, carbon, nitrogen, phosphorus, carbonToNitrogen)
                .flatMap(Optional::stream);
    }
}

package bedledger.projections.breakdown;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Farm;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import bedledger.projections.tables.Tables;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is left of the residue on a farm's beds on a day, and when they are ready. */
public final class Breakdown {
    private final Pieces pieces;
    private final Map<String, FarmRate> rates;
    private final Optional<Double> cover;
    private final List<BedId> waiting;

    private Breakdown(Pieces pieces, Map<String, FarmRate> rates, Optional<Double> cover, List<BedId> waiting) {
        this.pieces = pieces;
        this.rates = rates;
        this.cover = cover;
        this.waiting = waiting;
    }

    public static Breakdown of(Farm farm, Tables tables, Weather weather, LocalDate on) {
        return of(farm, tables, weather, on, Optional.empty());
    }

    /**
     * The same with the farm's own threshold.
     *
     * @param cover the share of a bed that may be covered when it is ready, 0 to 1; empty for the table's
     */
    public static Breakdown of(Farm farm, Tables tables, Weather weather, LocalDate on, Optional<Double> cover) {
        return of(farm, tables, weather, on, cover, MassUnit.KILOGRAM);
    }

    /** The same with sentences that speak of masses in a unit. */
    public static Breakdown of(
            Farm farm, Tables tables, Weather weather, LocalDate on, Optional<Double> cover, MassUnit unit) {
        List<BedId> waiting =
                farm.beds().stream().filter(bed -> waits(farm, bed, on)).toList();
        return of(farm, tables, weather, on, cover, unit, waiting);
    }

    /** The same for one bed alone, without folding the others; empty if it does not wait. */
    public static Optional<BedBreakdown> of(Farm farm, Tables tables, Weather weather, LocalDate on, BedId bed) {
        return waits(farm, bed, on)
                ? of(farm, tables, weather, on, Optional.empty(), MassUnit.KILOGRAM, List.of(bed))
                        .bed(bed)
                : Optional.empty();
    }

    private static Breakdown of(
            Farm farm,
            Tables tables,
            Weather weather,
            LocalDate on,
            Optional<Double> cover,
            MassUnit unit,
            List<BedId> waiting) {
        Returned returned = Returned.of(Recent.of(farm, waiting, on), tables, on, Options.DEFAULT.speaking(unit));
        Pieces pieces = new Pieces(farm, tables, weather, returned, unit);
        waiting.forEach(bed -> pieces.of(bed).stream().map(Return::day).forEach(pieces::reachBackTo));
        Map<String, FarmRate> rates = new Looks(pieces, returned).rates();
        return new Breakdown(pieces, rates, cover, waiting);
    }

    /** Whether a bed lies under a tarp, or was left empty by a crop and nothing was planted since. */
    public static boolean waits(Farm farm, BedId bed, LocalDate on) {
        BedState state = farm.bed(bed).on(on);
        boolean empty = state.laidOut() != null
                && state.retired() == null
                && state.crops().isEmpty();
        return empty
                && (state.tarp() != null || BedReading.emptied(farm, bed, on).isPresent());
    }

    /** The beds that wait, in natural order. */
    public List<BedBreakdown> waiting() {
        return waiting.stream().map(this::read).toList();
    }

    /** One bed; empty if it does not wait. */
    public Optional<BedBreakdown> bed(BedId bed) {
        return waiting.contains(bed) ? Optional.of(read(bed)) : Optional.empty();
    }

    private BedBreakdown read(BedId bed) {
        return new BedReading(pieces, rates, bed, cover).read();
    }

    /** The rates that the farm's own looks corrected. */
    public Collection<FarmRate> rates() {
        return List.copyOf(rates.values());
    }
}

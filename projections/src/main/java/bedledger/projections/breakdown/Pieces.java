package bedledger.projections.breakdown;

import bedledger.language.BedId;
import bedledger.language.Farm;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.history.BedAreas;
import bedledger.projections.returned.BedShare;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import bedledger.projections.tables.Tables;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The shoots that went into each bed, latest first, and the days they lie through. */
final class Pieces {
    /** Days read before the first one wanted, for the running mean of the air and the wetness of residue. */
    private static final int WARM_UP = 14;

    final Farm farm;
    final Tables tables;
    final Weather weather;
    final LocalDate on;
    final MassUnit unit;
    final BedAreas areas;
    private final Map<BedId, List<Return>> byBed = new HashMap<>();
    private final Map<BedId, BedDays> days = new HashMap<>();
    private LocalDate from;
    private Optional<Climate> climate = Optional.empty();

    Pieces(Farm farm, Tables tables, Weather weather, Returned returned, MassUnit unit) {
        this.farm = farm;
        this.tables = tables;
        this.weather = weather;
        this.on = returned.asOf();
        this.unit = unit;
        this.areas = new BedAreas(farm);
        this.from = on;
        returned.pieces().stream()
                .filter(piece -> piece.kind().isShoots())
                .sorted(Comparator.comparing(Return::day).reversed())
                .forEach(piece -> piece.beds().stream()
                        .map(BedShare::bed)
                        .forEach(bed -> byBed.computeIfAbsent(bed, each -> new ArrayList<>())
                                .add(piece)));
    }

    /** The pieces of the last croppings of a bed, latest first. */
    List<Return> of(BedId bed) {
        List<Return> all = byBed.getOrDefault(bed, List.of());
        return all.subList(0, Math.min(all.size(), Constants.count("croppings looked back")));
    }

    /** The latest piece that lay on a bed on a day, of a crop if one is named. */
    Optional<Return> lyingOn(BedId bed, LocalDate day, Optional<String> crop) {
        return byBed.getOrDefault(bed, List.of()).stream()
                .filter(piece -> !piece.day().isAfter(day))
                .filter(piece -> crop.isEmpty() || crop.get().equals(piece.what()))
                .findFirst()
                .filter(piece ->
                        piece.day().plusDays(Constants.count("horizon")).isAfter(day));
    }

    /** Says that days from here on will be wanted; all of it before the first is asked for. */
    void reachBackTo(LocalDate day) {
        if (climate.isPresent()) {
            throw new IllegalStateException("the weather was read already, from " + from);
        }
        from = day.isBefore(from) ? day : from;
    }

    Climate climate() {
        Climate known = climate.orElseGet(
                () -> new Climate(weather, from.minusDays(WARM_UP), on.plusDays(Constants.count("horizon"))));
        climate = Optional.of(known);
        return known;
    }

    BedDays days(BedId bed) {
        return days.computeIfAbsent(bed, each -> new BedDays(farm, each, climate(), areas, on));
    }

    /** The piece on its way; empty where its mass or its group is not known. */
    Optional<Going> going(Return piece, BedId bed, Map<String, FarmRate> rates) {
        return ResidueGroup.ofCrop(piece.what())
                .filter(group -> piece.on(bed).dry().isPresent())
                .map(group -> new Going(piece, bed, group, rates(group, rates), tables, days(bed)));
    }

    private static Rates rates(ResidueGroup group, Map<String, FarmRate> rates) {
        FarmRate own = rates.get(group.name());
        return own == null ? Rates.ofTable(group) : own.rates();
    }
}

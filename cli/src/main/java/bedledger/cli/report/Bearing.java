package bedledger.cli.report;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.FieldId;
import bedledger.language.Place;
import bedledger.language.SeedLotId;
import bedledger.language.TrayId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What bears on a bed beside itself: its field, and the piles, materials, seed and trays that its entries name. */
record Bearing(Asked asked) {
    List<Place> on(BedId bed, BedState state) {
        Set<Place> places = new LinkedHashSet<>();
        FieldId field = state.field();
        if (field != null) {
            places.add(field);
        }
        asked.entries(bed).stream()
                .flatMap(entry -> entry.fact().places().stream())
                .filter(place -> !(place instanceof BedId))
                .flatMap(this::withItsSeed)
                .forEach(places::add);
        return List.copyOf(places);
    }

    /** Trays bring the seed they were sown with. */
    private Stream<Place> withItsSeed(Place place) {
        return place instanceof TrayId
                ? Stream.concat(
                        Stream.of(place),
                        asked.entries(place).stream()
                                .flatMap(entry -> entry.fact().places().stream())
                                .filter(SeedLotId.class::isInstance))
                : Stream.of(place);
    }
}

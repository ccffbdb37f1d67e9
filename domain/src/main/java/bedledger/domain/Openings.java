package bedledger.domain;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.FieldId;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.LotId;
import bedledger.language.PileId;
import bedledger.language.Place;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds the entry that brings a place in, for whoever used it on an earlier day. */
final class Openings {
    static Optional<Entry> of(Farm farm, Place place) {
        boolean there = place instanceof BedId bed
                && farm.bed(bed).steps().stream()
                        .anyMatch(step -> !step.fits() && step.before().laidOut() != null);
        return there
                ? Optional.empty()
                : farm.entries(place).stream().filter(opens(place)).findFirst();
    }

    private static Predicate<Entry> opens(Place place) {
        if (place instanceof BedId bed) {
            return entry -> entry.fact() instanceof Land.BedLaidOut
                    || (entry.fact() instanceof Land.BedSplit split
                            && split.into().contains(bed));
        }
        if (place instanceof FieldId) {
            return entry -> entry.fact() instanceof Land.FieldRegistered;
        }
        if (place instanceof PileId) {
            return entry -> entry.fact() instanceof Fertility.PileBuilt;
        }
        return entry -> place instanceof LotId
                && (entry.fact() instanceof Harvesting.Harvested || entry.fact() instanceof Harvesting.LotFound);
    }

    private Openings() {}
}

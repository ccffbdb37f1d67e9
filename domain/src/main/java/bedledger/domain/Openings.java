package bedledger.domain;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.FieldId;
import bedledger.language.Land;
import bedledger.language.LotAccount;
import bedledger.language.LotId;
import bedledger.language.Oversight;
import bedledger.language.PileId;
import bedledger.language.Place;
import bedledger.language.Planting;
import bedledger.language.SampleId;
import bedledger.language.TrayId;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds the entry that brings a place in, for whoever used it on an earlier day. */
final class Openings {
    /** The entry that brings the place in, if it does so on a day after this one. */
    static Optional<Entry> after(LocalDate day, Farm farm, Place place) {
        return farm.entries(place).stream()
                .filter(opens(place))
                .filter(entry -> entry.head().doneOn().isAfter(day))
                .findFirst();
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
        if (place instanceof TrayId) {
            return entry -> entry.fact() instanceof Planting.TraysSown;
        }
        if (place instanceof SampleId) {
            return entry -> entry.fact() instanceof Oversight.SampleTaken;
        }
        return entry -> place instanceof LotId lot && LotAccount.opens(lot, entry.fact());
    }

    private Openings() {}
}

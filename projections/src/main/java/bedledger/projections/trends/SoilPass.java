package bedledger.projections.trends;

import bedledger.language.Acts;
import bedledger.language.BedId;
import bedledger.language.BedWork;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.Length;
import bedledger.language.Step;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * One working of the soil of a bed: tilled, harrowed, worked in, broadforked or shaped.
 *
 * @param work the word of the act
 * @param implement as written; empty where it is not on record
 * @param passes empty where it is not on record: then it was one at least
 * @param depth empty where it is not on record
 */
public record SoilPass(
        BedId bed, Entry entry, String work, Optional<String> implement, OptionalInt passes, Optional<Length> depth) {

    /** What was worked by the end of a day, in the order of the work; an entry that does not fit is left out. */
    static List<SoilPass> of(Farm farm, BedId bed, LocalDate asOf) {
        return farm.bed(bed).steps().stream()
                .filter(Step::fits)
                .map(Step::entry)
                .filter(entry -> !entry.head().doneOn().isAfter(asOf))
                .flatMap(entry -> of(bed, entry).stream())
                .toList();
    }

    private static Optional<SoilPass> of(BedId bed, Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof BedWork.Tilled tilled) {
            return Optional.of(pass(bed, entry, tilled.implement(), tilled.passes(), tilled.depth()));
        }
        if (fact instanceof BedWork.Harrowed harrowed) {
            return Optional.of(pass(bed, entry, harrowed.implement(), harrowed.passes(), harrowed.depth()));
        }
        if (fact instanceof Fertility.Incorporated worked) {
            return Optional.of(pass(bed, entry, worked.implement(), worked.passes(), worked.depth()));
        }
        if (fact instanceof BedWork.BedShaped shaped) {
            return Optional.of(pass(bed, entry, shaped.implement(), shaped.passes(), null));
        }
        return fact instanceof BedWork.Broadforked forked
                ? Optional.of(pass(bed, entry, null, null, forked.depth()))
                : Optional.empty();
    }

    private static SoilPass pass(
            BedId bed, Entry entry, @Nullable String implement, @Nullable Integer passes, @Nullable Length depth) {
        return new SoilPass(
                bed,
                entry,
                Acts.of(entry.fact().getClass()).word(),
                Optional.ofNullable(implement),
                passes == null ? OptionalInt.empty() : OptionalInt.of(passes),
                Optional.ofNullable(depth));
    }

    public LocalDate day() {
        return entry.head().doneOn();
    }

    /** Whether it turns or mixes the soil; the broadfork loosens it and leaves the layers where they are. */
    public boolean mixes() {
        return !(entry.fact() instanceof BedWork.Broadforked);
    }
}

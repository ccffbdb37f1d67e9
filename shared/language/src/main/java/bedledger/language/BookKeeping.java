package bedledger.language;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The record itself. */
public sealed interface BookKeeping extends Fact {

    @Act(name = "book.opened", help = "Opens a book; always the first entry.")
    record BookOpened(
            @Asks("the farm's name") String farm,
            @Asks("a practice book, for ever") boolean practice,

            @Asks("the time zone whose days the book counts in")
            String timeZone,

            @Asks("the rule book: us or eu") String rules,
            @Asks("the units shown: metric or us") String units)
            implements BookKeeping {}

    @Act(name = "record.struck", help = "Voids an entry in force; the head names it and says why.")
    record Struck() implements BookKeeping {}

    @Act(name = "document.attached", help = "Attaches a document to an entry, by its content hash.")
    record DocumentAttached(
            @Asks("the number of the entry it belongs to") long entry,
            @Asks("the SHA-256 of the file") DocumentId document,
            @Asks("the file's name") String fileName)
            implements BookKeeping {}

    @Act(
            word = "sign-off",
            name = "period.signed-off",
            help = "Sign off a period after looking it through.",
            example = "did sign-off --from 2025-01-01 --to 2025-12-31")
    record PeriodSignedOff(
            @Asks("first day of the period") LocalDate from,
            @Asks("last day of the period") LocalDate to) implements BookKeeping {
        @Override
        public List<Problem> faults() {
            return to.isBefore(from)
                    ? List.of(new Problem("to", to.toString(), "it lies before " + from, "turn the two days round"))
                    : List.of();
        }
    }

    @Act(
            word = "own-value",
            name = "table.own-value-noted",
            help = "Put a value measured on this farm over the one in the tables.",
            example =
                    "did own-value broccoli --coefficient residue-dry-share --value 0.14 --how \"three oven samples\"")
    record OwnValueNoted(
            @Asks(value = "the crop or material", bare = true)
            String of,

            @Asks("the coefficient's name, as 'bedledger rules --tables' lists it")
            String coefficient,

            @Asks("the value") Ratio value,
            @Asks("the low end") @Nullable Ratio low,
            @Asks("the high end") @Nullable Ratio high,
            @Asks("how it was measured") String how)
            implements BookKeeping {
        @Override
        public List<Problem> faults() {
            boolean upsideDown = (low != null && low.number().compareTo(value.number()) > 0)
                    || (high != null && high.number().compareTo(value.number()) < 0);
            return upsideDown
                    ? List.of(new Problem(
                            "value",
                            value.toString(),
                            "it does not lie between low and high",
                            "check the three numbers"))
                    : List.of();
        }
    }

    @Act(
            word = "choose-reading",
            name = "rules.reading-chosen",
            help = "Choose how a rule is read where certifiers differ; 'bedledger rules' lists the readings.",
            example =
                    "did choose-reading land-clean-from-same-date --applies no --basis \"certifier's letter of 2025-02-01\"")
    record ReadingChosen(
            @Asks(value = "the reading, as 'bedledger rules' lists it", bare = true)
            String reading,

            @Asks("yes: as its sentence says; no: as it says of 'off'")
            boolean applies,

            @Asks("on whose word, and where that is kept") String basis)
            implements BookKeeping {}

    @Act(
            word = "add-crop",
            name = "table.crop-added",
            help = "Add a crop that the tables do not know.",
            example = "did add-crop oca --family Oxalidaceae")
    record CropAdded(
            @Asks(value = "the crop", bare = true) CropName crop,
            @Asks("its botanical family") String family,

            @Asks("yes if the edible part touches the soil, no if it does not") @Nullable
            Boolean touchesSoil)
            implements BookKeeping {}
}

package bedledger.projections.history;

import bedledger.language.Entry;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One entry on a bed's page, in force or not.
 *
 * @param words the fact in words, as this entry says it, whatever was written later
 * @param answer what replaced or struck it; empty while it is in force
 * @param corrects the entry it answers itself
 * @param writtenOn the day of writing, in the book's time zone
 * @param lag days from the work to the writing of this entry, be it a correction: a neutral figure
 * @param doesNotFit why it does not fit the bed's timeline and changes nothing; empty where it does
 */
public record HistoryLine(
        Entry entry,
        String words,
        Status status,
        Optional<Answer> answer,
        Optional<Answered> corrects,
        LocalDate writtenOn,
        long lag,
        List<String> doesNotFit) {
    /** What became of an entry. */
    public enum Status {
        IN_FORCE("in force"),
        REPLACED("replaced"),
        STRUCK("struck"),
        /** It answers an entry that was no longer in force. */
        WITHOUT_EFFECT("without effect");

        private final String words;

        Status(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The entry that replaced or struck this one, why, and what it says. */
    public record Answer(long number, String reason, String words, LocalDate writtenOn) {}

    /** The entry that this one answers, why, and what that had said. */
    public record Answered(long number, String reason, String words) {}

    public HistoryLine {
        doesNotFit = List.copyOf(doesNotFit);
    }

    public long number() {
        return entry.number();
    }

    public LocalDate doneOn() {
        return entry.head().doneOn();
    }
}

package bedledger.projections.history;

import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Farm;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** The time zone whose days a book counts in, as its first entry says; UTC where no entry says one. */
public record BookZone(ZoneId zone) {
    public static BookZone of(Farm farm) {
        return new BookZone(farm.written().stream()
                .map(Entry::fact)
                .filter(BookKeeping.BookOpened.class::isInstance)
                .map(fact -> ZoneId.of(((BookKeeping.BookOpened) fact).timeZone()))
                .findFirst()
                .orElse(ZoneOffset.UTC));
    }

    /** The day on which an entry was written. */
    public LocalDate writtenOn(Entry entry) {
        return LocalDate.ofInstant(entry.writtenAt(), zone);
    }
}

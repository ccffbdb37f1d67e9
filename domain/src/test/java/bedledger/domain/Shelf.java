package bedledger.domain;

import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.PersonId;
import bedledger.language.SeasonBook;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.BookReader;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Makes and opens books for tests, and drafts as a grower would say them. */
final class Shelf {
    static final PersonId OWNER = new PersonId("owner");
    static final Instant NOON = Instant.parse("2026-01-02T17:00:00Z");
    private final BookFolder folder;
    private final ActIds ids = new ActIds(new Random(7));

    Shelf(Path folder) {
        this.folder = new BookFolder(folder);
    }

    BookFolder folder() {
        return folder;
    }

    static BookKeeping.BookOpened opening(boolean practice) {
        return new BookKeeping.BookOpened("Ash Corner", practice, "America/New_York", "us", "metric");
    }

    /** A new book whose clock stands at noon. */
    Book create(boolean practice, @Nullable Instant practiceTime) {
        return Book.create(
                folder, SigningKey.generate("ash-corner/1"), opening(practice), OWNER, at(NOON), ids, practiceTime);
    }

    /** A new book with four beds in a field. */
    Book withBeds() {
        Book book = create(false, null);
        book.write(
                List.of(
                        draft("2025-01-05", "register-field", "field=North", "gross=0.05ha"),
                        draft("2025-01-05", "lay-out", "beds=N1 N2 N3 N4", "field=North", "length=20m", "width=0.75m")),
                OWNER,
                null);
        return book;
    }

    Book open(Instant now) {
        return Book.open(folder, at(now), ids);
    }

    static Clock at(Instant now) {
        return Clock.fixed(now, ZoneOffset.UTC);
    }

    List<Entry> entries() {
        return new ArrayList<>(BookReader.of(folder).entries());
    }

    /** A draft without a place in its day; each argument is {@code option=value}. */
    static Draft draft(String day, String word, String... options) {
        Entry entry = new SeasonBook().on(day).did(word, options);
        return new Draft(entry.head().placed(0), entry.fact());
    }
}

package bedledger.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.BedId;
import bedledger.language.Entry;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Answers that are longer than H2 keeps in memory, as in a large book on a small machine. */
class LittleMemoryTest {
    private static final int ENTRIES = 400;

    @TempDir
    Path scratch;

    @Test
    void answersTheSameHoweverFewRowsAreKeptInMemory() {
        PracticeBook book = new PracticeBook(scratch).holding(ENTRIES);
        List<List<Entry>> plenty = asked(book, "");
        assertThat(plenty).allSatisfy(entries -> assertThat(entries).hasSizeGreaterThan(20));
        assertThat(asked(book, ";MAX_MEMORY_ROWS=5")).isEqualTo(plenty);
    }

    private static List<List<Entry>> asked(PracticeBook book, String more) {
        try (Ledger ledger = Ledger.open(book.folder, Database.NO_REUSE + more)) {
            List<BedId> beds = ledger.placeKeys("bed:").stream()
                    .map(key -> new BedId(key.substring("bed:".length())))
                    .toList();
            return Stream.concat(
                            Stream.of(ledger.touching(beds)),
                            Stream.of("bed.broadforked", "bed.tilled").map(ledger::ofKind))
                    .filter(entries -> !entries.isEmpty())
                    .toList();
        }
    }
}

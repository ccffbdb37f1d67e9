package bedledger.domain;

import static bedledger.domain.Shelf.OWNER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.language.BookKeeping;
import bedledger.language.DocumentId;
import bedledger.language.Head;
import bedledger.language.Refused;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An entry that could not be read again is refused before it is sealed. */
class ReadBackTest {
    private static final LocalDate DAY = LocalDate.parse("2025-04-10");

    @TempDir
    Path folder;

    private Shelf shelf;

    @BeforeEach
    void shelf() {
        shelf = new Shelf(folder.resolve("book"));
    }

    /** A document's name is the one text that comes from a file system, not from a keyboard. */
    private static Draft document(String name) {
        return new Draft(
                Head.on(DAY, 0).by(OWNER), new BookKeeping.DocumentAttached(2, new DocumentId("ab".repeat(32)), name));
    }

    @ParameterizedTest
    @ValueSource(strings = {"receipt\u0007.pdf", "lone \ud800 half.pdf", "\u001b[2J.pdf"})
    void sealsNothingThatCouldNotBeReadAgain(String name) {
        try (Book book = shelf.withBeds()) {
            assertThatThrownBy(() -> book.write(List.of(document("slip.pdf"), document(name)), OWNER, null))
                    .isInstanceOf(Refused.class);
            assertThat(book.size()).isEqualTo(3);
        }
        assertThat(shelf.entries()).hasSize(3);
    }

    @Test
    void sealsAPlainName() {
        try (Book book = shelf.withBeds()) {
            book.write(List.of(document("Gemüse ½ slip.pdf")), OWNER, null);
        }
        assertThat(shelf.entries()).hasSize(4);
    }
}

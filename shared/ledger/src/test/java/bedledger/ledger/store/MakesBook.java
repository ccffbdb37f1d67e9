package bedledger.ledger.store;

import bedledger.ledger.note.SigningKey;
import java.nio.file.Path;

/** A program that makes a book. */
public final class MakesBook {
    public static void main(String[] arguments) {
        Ledger.create(new BookFolder(Path.of(arguments[0])), SigningKey.generate("example.org/greenfold"));
    }

    private MakesBook() {}
}

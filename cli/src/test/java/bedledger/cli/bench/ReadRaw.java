package bedledger.cli.bench;

import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.BookReader;
import java.nio.file.Path;

/** The floor of every reading command: each line of the journal made an entry, and nothing asked of it. */
public final class ReadRaw {
    public static void main(String[] arguments) {
        System.out.println(
                BookReader.of(new BookFolder(Path.of(arguments[0]))).entries().size());
    }

    private ReadRaw() {}
}

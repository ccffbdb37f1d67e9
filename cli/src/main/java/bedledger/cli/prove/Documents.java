package bedledger.cli.prove;

import bedledger.cli.ContentHash;
import bedledger.cli.prove.Verify.DisagreementView;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.BookReader;
import bedledger.ledger.store.BookUnusable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Holds the attached documents against the content hashes in the log. */
final class Documents {
    static List<DisagreementView> check(BookFolder folder) {
        List<DisagreementView> found = new ArrayList<>();
        try {
            BookReader.of(folder).entries().stream()
                    .filter(entry -> entry.fact() instanceof BookKeeping.DocumentAttached)
                    .forEach(entry -> check(folder, entry, found));
        } catch (BookUnusable unreadable) {
            return List.of(); // the verifier itself has named what cannot be read
        }
        return found;
    }

    private static void check(BookFolder folder, Entry entry, List<DisagreementView> found) {
        String expected =
                ((BookKeeping.DocumentAttached) entry.fact()).document().toString();
        Path file = folder.documents().resolve(expected);
        String actual = hash(file);
        if (!actual.equals(expected)) {
            found.add(new DisagreementView(
                    entry.number(),
                    entry.number(),
                    "document-differs",
                    "document " + expected,
                    actual,
                    "a file with that hash",
                    "Take the document from a copy you trust."));
        }
    }

    private static String hash(Path file) {
        try {
            return Files.isRegularFile(file) ? ContentHash.of(file).toString() : "no file";
        } catch (IOException unreadable) {
            return "a file that cannot be read";
        }
    }

    private Documents() {}
}

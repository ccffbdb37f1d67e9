package bedledger.ledger.store;

import bedledger.ledger.note.VerifierKey;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/**
 * The folder of a book: what lies where in it.
 *
 * <p>The file {@code bedledger.book} marks it: a first line {@code bedledger book}, a second line {@code format 1}, a third with the
 * book's verifier key.
 */
public record BookFolder(Path root) {
    public static final String MARKER = "bedledger.book";
    private static final String FIRST = "bedledger book";
    private static final int FORMAT = 1;

    public Path marker() {
        return root.resolve(MARKER);
    }

    public Path journal() {
        return root.resolve("journal.jsonl");
    }

    public Path checkpoints() {
        return root.resolve("checkpoints.txt");
    }

    public Path documents() {
        return root.resolve("documents");
    }

    Path store() {
        return root.resolve("store");
    }

    Path databaseFile() {
        return store().resolve("book.mv.db");
    }

    /** The book's public key, as the marker holds it; throws {@link BookUnusable} for a folder that is no book, or too new a one. */
    public VerifierKey verifierKey() {
        List<String> lines = lines();
        if (lines.size() < 3 || !lines.get(0).equals(FIRST) || !lines.get(1).matches("format [0-9]{1,6}")) {
            throw new BookUnusable("'" + root + "' is not a book: its file " + MARKER
                    + " is damaged. Take that file from your backup.");
        }
        int format = Integer.parseInt(lines.get(1).substring("format ".length()));
        if (format > FORMAT) {
            throw new BookUnusable("The book in '" + root + "' has format " + format + "; this program knows " + FORMAT
                    + ". A newer Bedledger wrote it: update, then try again. Nothing was changed.");
        }
        return VerifierKey.parse(lines.get(2).substring("key ".length()));
    }

    private List<String> lines() {
        if (!Files.isRegularFile(marker())) {
            throw new BookUnusable("'" + root + "' is not a book: it has no file " + MARKER
                    + ". Give the book's folder with --book, or start one: bedledger new FOLDER --farm NAME");
        }
        try {
            return Files.readAllLines(marker(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new BookUnusable("The book in '" + root + "' cannot be read: " + unreadable.getMessage()
                    + ". Check the disk and your rights to the folder.");
        }
    }

    void mark(VerifierKey key) throws IOException {
        Files.writeString(
                marker(),
                FIRST + "\nformat " + FORMAT + "\nkey " + key + "\n",
                StandardCharsets.UTF_8,
                StandardOpenOption.CREATE_NEW);
    }

    void requireWritable() {
        if (!Files.isWritable(root) || !Files.isWritable(journal().resolveSibling("."))) {
            throw new BookUnusable("Nothing was written: the folder '" + root
                    + "' is read-only for you. Change its rights, or copy the book to a disk you may write to.");
        }
    }
}

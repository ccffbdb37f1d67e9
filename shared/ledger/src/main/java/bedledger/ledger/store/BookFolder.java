package bedledger.ledger.store;

import bedledger.ledger.journal.Journal;
import bedledger.ledger.note.VerifierKey;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * The folder of a book: what lies where in it.
 *
 * <p>The file {@code bedledger.book} marks it: a first line {@code bedledger book}, a second line {@code format 1}, a third with the
 * book's verifier key.
 */
public record BookFolder(Path root) {
    public static final String MARKER = "bedledger.book";
    private static final String DATABASE = "book.mv.db";

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
        return store().resolve(DATABASE);
    }

    /** The book's public key, as the marker holds it; throws {@link BookUnusable} for a folder that is no book, or too new a one. */
    public VerifierKey verifierKey() {
        return Marker.read(this);
    }

    void make(VerifierKey key) {
        requireNameForDatabase();
        try {
            Files.createDirectories(root);
            if (Files.exists(marker()) || holdsSomething(journal())) {
                throw new BookUnusable("There is a book in '" + root
                        + "' already; nothing was changed. Give another folder, or write in that one.");
            }
            Files.createDirectories(documents());
            Journal.open(journal()).close();
            Marker.write(this, key);
        } catch (IOException failed) {
            throw new BookUnusable("The book could not be made in '" + root + "': " + failed.getMessage()
                    + ". Check that the disk is there, writable and not full.");
        }
    }

    /** Makes a book here of the lines and the checkpoint of another, as they are; throws {@link BookUnusable} where a book is already. */
    public void lay(VerifierKey key, InputStream lines, byte[] checkpoint) throws IOException {
        make(key);
        Files.copy(lines, journal(), StandardCopyOption.REPLACE_EXISTING);
        Files.write(checkpoints(), checkpoint);
    }

    /** An empty journal without a marker is what a creation leaves that was cut short. */
    private static boolean holdsSomething(Path journal) throws IOException {
        return Files.exists(journal) && Files.size(journal) > 0;
    }

    /** H2 reads what follows a semicolon in a database's address as settings, and has no way to quote one. */
    private void requireNameForDatabase() {
        if (root.toAbsolutePath().toString().contains(";")) {
            throw new BookUnusable("The folder '" + root
                    + "' has a semicolon in its path, which the database cannot have; nothing was changed."
                    + " Give a folder without one.");
        }
    }

    void requireUsable() {
        requireNameForDatabase();
        verifierKey();
        requireJournal();
        if (!Files.isWritable(root)) {
            throw new BookUnusable("Nothing was written: the folder '" + root
                    + "' is read-only for you. Change its rights, or copy the book to a disk you may write to.");
        }
    }

    /** The journal is made with the book, so a book without one has lost it; an empty one made in its place would hide that. */
    void requireJournal() {
        if (!Files.exists(journal())) {
            throw new BookUnusable("The journal '" + journal()
                    + "' is missing; nothing was written. Take it from your backup: everything else is made from it.");
        }
    }

    /** Moves the database out of the way, never over what was moved there before: it may hold what the journal has lost. */
    void setDatabaseAside() {
        try {
            if (Files.exists(databaseFile())) {
                Path aside = Files.createDirectories(root.resolve("set-aside"));
                Files.move(databaseFile(), free(aside));
            }
        } catch (IOException failed) {
            throw new BookUnusable("The damaged database '" + databaseFile() + "' could not be set aside: "
                    + failed.getMessage() + ". Move it away by hand; the journal holds everything.");
        }
    }

    private static Path free(Path aside) {
        Path target = aside.resolve(DATABASE);
        for (int taken = 2; Files.exists(target); taken++) {
            target = aside.resolve(DATABASE + "-" + taken);
        }
        return target;
    }
}

package bedledger.cli;

import bedledger.ledger.note.KeyFile;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.note.VerifierKey;
import bedledger.ledger.store.BookFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Finds the book, and the key that signs for it. */
public final class BookPlace {
    /** The folder given, or the nearest folder upward from where the program was started that holds a book. */
    public static BookFolder find(Surroundings around, @Nullable Path given) {
        if (given != null) {
            Path folder = around.folder().resolve(given);
            if (!Files.isDirectory(folder)) {
                throw new Failure(
                        Exit.NO_INPUT,
                        "There is no folder '" + given + "'. Check the path, or start a book there: bedledger new "
                                + given + " --farm NAME");
            }
            return new BookFolder(folder.normalize());
        }
        return nearest(around).orElseThrow(() -> none(around));
    }

    /** Whether there is a book in this folder or above it. */
    public static boolean isNear(Surroundings around) {
        return nearest(around).isPresent();
    }

    private static Optional<BookFolder> nearest(Surroundings around) {
        for (Path at = around.folder().toAbsolutePath(); at != null; at = at.getParent()) {
            if (Files.exists(at.resolve(BookFolder.MARKER))) {
                return Optional.of(new BookFolder(at));
            }
        }
        return Optional.empty();
    }

    private static Failure none(Surroundings around) {
        return new Failure(
                Exit.NO_INPUT,
                "There is no book in '" + around.folder()
                        + "' or above it. Go to the book's folder, give it with --book FOLDER, or start one: bedledger new FOLDER --farm NAME");
    }

    /** Where the key of that name is kept: with the person, not with the book, so that a copied book never carries it. */
    public static Path keyFile(Surroundings around, VerifierKey key) {
        return keyFile(around, key.name());
    }

    static Path keyFile(Surroundings around, String name) {
        return around.configuration().resolve("keys").resolve(name.replace('/', '_') + ".key");
    }

    /** The key that signs for this book, if this person has it; a warning about its file goes to the error stream. */
    public static Optional<SigningKey> key(Surroundings around, BookFolder folder) {
        Path file = keyFile(around, folder.verifierKey());
        if (!Files.exists(file)) {
            around.err().println("No checkpoint was signed: the book's key is not on this computer (" + file + ").");
            return Optional.empty();
        }
        KeyFile.Loaded loaded = KeyFile.load(file);
        loaded.warning().ifPresent(around.err()::println);
        return Optional.of(loaded.key());
    }

    private BookPlace() {}
}

package bedledger.ledger.verify;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where bytes come from: a file, or a member of a packet.
 *
 * @param name as it is named to people
 * @param opening opens it at its beginning
 */
public record Source(String name, Opening opening) {

    /** Opens a stream at its beginning. */
    @FunctionalInterface
    public interface Opening {
        InputStream open() throws IOException;
    }

    /** A file. */
    public static Source of(Path file) {
        return new Source(file.toString(), () -> Files.newInputStream(file));
    }

    InputStream open() throws IOException {
        return opening.open();
    }
}

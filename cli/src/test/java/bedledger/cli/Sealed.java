package bedledger.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Every file of a book but its database, byte for byte, and which files those are. */
record Sealed(Map<String, String> files) {
    static Sealed of(Path book) {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(book)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = book.relativize(file).toString();
                if (!name.startsWith("store") && !name.endsWith(".lock")) {
                    files.put(name, new BigInteger(1, Files.readAllBytes(file)).toString(16));
                }
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return new Sealed(files);
    }
}

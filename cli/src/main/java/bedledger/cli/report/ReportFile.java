package bedledger.cli.report;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes a new file and never over one that is there: the name gets a number until it is free. */
final class ReportFile {
    /** Writes the content as it is made. */
    @FunctionalInterface
    interface Content {
        void write(Writer out) throws IOException;
    }

    static Path write(Path wanted, Content content) {
        try {
            Path parent = wanted.toAbsolutePath().getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            return firstFree(wanted, content);
        } catch (IOException | UncheckedIOException failed) {
            throw new Failure(
                    Exit.CANNOT_CREATE,
                    "The report could not be written to '" + wanted + "': " + failed.getMessage()
                            + ". Choose another place with --out FILE, or make room on the disk.");
        }
    }

    private static Path firstFree(Path wanted, Content content) throws IOException {
        Path file = wanted;
        for (int more = 2; !written(file, content); more++) {
            file = numbered(wanted, more);
        }
        return file;
    }

    /** Whether the name was free, and the file is now written. */
    private static boolean written(Path file, Content content) throws IOException {
        try (Writer out = open(file)) {
            fill(file, out, content);
            return true;
        } catch (FileAlreadyExistsException taken) {
            return false;
        }
    }

    private static Writer open(Path file) throws IOException {
        return new BufferedWriter(
                Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW), 1 << 16);
    }

    /** Half a report must not pass for a whole one. */
    private static void fill(Path file, Writer out, Content content) throws IOException {
        boolean whole = false;
        try {
            content.write(out);
            whole = true;
        } finally {
            if (!whole) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static Path numbered(Path wanted, int number) {
        String name = wanted.getFileName().toString();
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        String ending = dot > 0 ? name.substring(dot) : "";
        return wanted.resolveSibling(stem + "-" + number + ending);
    }

    private ReportFile() {}
}

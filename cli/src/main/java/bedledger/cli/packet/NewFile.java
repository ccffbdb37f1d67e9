package bedledger.cli.packet;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;

/** Writes a new file and never over one that is there: the name gets a number until it is free. */
final class NewFile {
    /** Writes the content. */
    @FunctionalInterface
    interface Content {
        void write(FileChannel to) throws IOException;
    }

    static Path write(Path wanted, Content content) {
        try {
            Path parent = wanted.toAbsolutePath().getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            Path file = wanted;
            for (int more = 2; !written(file, content); more++) {
                file = numbered(wanted, more);
            }
            return file;
        } catch (IOException | UncheckedIOException failed) {
            throw new Failure(
                    Exit.CANNOT_CREATE,
                    "'" + wanted + "' could not be written: " + failed.getMessage()
                            + ". Choose another place with --out FILE, or make room on the disk.");
        }
    }

    private static boolean written(Path file, Content content) throws IOException {
        boolean whole = false;
        boolean ours = false;
        try (FileChannel to = FileChannel.open(file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
            ours = true;
            content.write(to);
            whole = true;
            return true;
        } catch (FileAlreadyExistsException taken) {
            return false;
        } finally {
            if (ours && !whole) {
                Files.deleteIfExists(file); // half a packet must not pass for a whole one
            }
        }
    }

    private static Path numbered(Path wanted, int number) {
        String name = wanted.getFileName().toString();
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        return wanted.resolveSibling(stem + "-" + number + (dot > 0 ? name.substring(dot) : ""));
    }

    private NewFile() {}
}

package bedledger.ledger.aside;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** The folder {@code set-aside} beside a file, where bytes go that were never acknowledged. */
public final class SetAside {

    private static final int CHUNK = 64 * 1024;

    /** Reads bytes of the file at a position, as {@link FileChannel#read(ByteBuffer, long)} does. */
    @FunctionalInterface
    public interface Source {

        /** Reads into the buffer from this position; returns -1 at the end. */
        int read(ByteBuffer into, long position) throws IOException;
    }

    private SetAside() {}

    /**
     * Copies everything from an offset to the end into a new file, forced to the disk; the caller then cuts the original.
     *
     * @return the copy, {@code set-aside/NAME-at-OFFSET} with a number behind it where that name is taken
     */
    public static Path copy(Source source, Path original, long from) throws IOException {
        Path folder = original.resolveSibling("set-aside");
        Files.createDirectories(folder);
        Path copy = null;
        for (int taken = 0; copy == null; taken++) {
            copy = tryCopy(source, from, folder.resolve(name(original, from, taken)));
        }
        forceFolder(folder);
        forceFolder(folder.toAbsolutePath().resolveSibling("."));
        return copy;
    }

    private static String name(Path original, long from, int taken) {
        String name = original.getFileName() + "-at-" + from;
        return taken == 0 ? name : name + "-" + (taken + 1);
    }

    private static @org.jspecify.annotations.Nullable Path tryCopy(Source source, long from, Path target)
            throws IOException {
        try (FileChannel out = FileChannel.open(target, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer chunk = ByteBuffer.allocate(CHUNK);
            long position = from;
            while (source.read(chunk, position) > 0) {
                chunk.flip();
                position += chunk.remaining();
                while (chunk.hasRemaining()) {
                    out.write(chunk);
                }
                chunk.clear();
            }
            out.force(true);
            return target;
        } catch (FileAlreadyExistsException taken) {
            return null;
        }
    }

    /** Makes new names in a folder survive a power cut, where the platform lets a folder be forced. */
    public static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notOffered) {
            // Windows does not open folders; there the rename itself is journaled by the file system.
            return;
        }
    }
}

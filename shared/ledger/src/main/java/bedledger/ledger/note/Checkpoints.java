package bedledger.ledger.note;

import static java.nio.charset.StandardCharsets.UTF_8;

import bedledger.ledger.aside.SetAside;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * An append-only file of signed checkpoints, outside the database.
 *
 * <p>Signed notes one after another, one empty line between two. A checkpoint's text has no empty line, so the blocks
 * between empty lines are by turns text and signatures. It checks no signatures: that is for {@link SignedNote#verify}.
 */
public final class Checkpoints {

    /** Far more than a note of three lines and a hundred signatures needs. */
    private static final int TAIL = 64 * 1024;

    private final Path file;

    private Checkpoints(Path file) {
        this.file = file;
    }

    /** The checkpoints in this file, which need not be there yet. */
    public static Checkpoints in(Path file) {
        return new Checkpoints(file);
    }

    /**
     * Appends a signed checkpoint and forces it to the disk before returning.
     *
     * <p>An unfinished note at the end, left by a process that died while it wrote, is moved to a file of its own first.
     *
     * @return where an unfinished note was moved to, if there was one
     * @throws NoteRejected where the note is no checkpoint, or the end of the file is damaged in another way
     * @throws UncheckedIOException where the file cannot be written
     */
    public Optional<Path> append(SignedNote note) {
        Checkpoint.parse(note.text());
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            Tail tail = Tail.read(channel);
            tail.last().ifPresent(last -> Checkpoint.parse(last.text()));
            Optional<Path> moved = moveUnfinished(channel, tail.end());
            writeAll(channel, tail.end() == 0 ? note.toBytes() : ("\n" + note).getBytes(UTF_8), tail.end());
            SetAside.forceFolder(file.toAbsolutePath().resolveSibling("."));
            return moved;
        } catch (IOException failed) {
            throw failed("written to", failed);
        }
    }

    private Optional<Path> moveUnfinished(FileChannel channel, long end) throws IOException {
        if (channel.size() == end) {
            return Optional.empty();
        }
        Path copy = SetAside.copy(channel::read, file, end);
        channel.truncate(end);
        channel.force(true);
        return Optional.of(copy);
    }

    private static void writeAll(FileChannel channel, byte[] bytes, long at) throws IOException {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        try {
            while (rest.hasRemaining()) {
                channel.write(rest, at + rest.position());
            }
            channel.force(true);
        } catch (IOException failed) {
            channel.truncate(at);
            throw failed;
        }
    }

    /**
     * All checkpoints, oldest first; an unfinished one at the end is left out.
     *
     * @throws NoteRejected where the file holds anything else
     * @throws UncheckedIOException where the file cannot be read
     */
    public List<SignedNote> all() {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            return NoteFile.parse(bytes(channel, 0)).notes().stream()
                    .map(SignedNote::parse)
                    .toList();
        } catch (NoSuchFileException none) {
            return List.of();
        } catch (IOException failed) {
            throw failed("read from", failed);
        }
    }

    /**
     * The newest checkpoint, read from the end of the file; an unfinished one is passed over.
     *
     * @throws NoteRejected where the end of the file is no signed note
     * @throws UncheckedIOException where the file cannot be read
     */
    public Optional<SignedNote> last() {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            return Tail.read(channel).last();
        } catch (NoSuchFileException none) {
            return Optional.empty();
        } catch (IOException failed) {
            throw failed("read from", failed);
        }
    }

    /** The last complete note, and the offset behind it. */
    private record Tail(Optional<SignedNote> last, long end) {

        static Tail read(FileChannel channel) throws IOException {
            long from = Math.max(0, channel.size() - TAIL);
            byte[] bytes = bytes(channel, from);
            NoteFile notes = from == 0 ? NoteFile.parse(bytes) : NoteFile.parseTail(bytes);
            if (notes.notes().isEmpty() && from > 0) {
                from = 0;
                notes = NoteFile.parse(bytes(channel, 0));
            }
            Optional<SignedNote> last = notes.notes().isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                            SignedNote.parse(notes.notes().get(notes.notes().size() - 1)));
            return new Tail(last, from + notes.end());
        }
    }

    private static byte[] bytes(FileChannel channel, long from) throws IOException {
        ByteBuffer into = ByteBuffer.allocate(Math.toIntExact(channel.size() - from));
        int read = 0;
        while (into.hasRemaining() && read >= 0) {
            read = channel.read(into, from + into.position());
        }
        return Arrays.copyOf(into.array(), into.position());
    }

    private UncheckedIOException failed(String did, IOException cause) {
        return new UncheckedIOException(
                "The checkpoint could not be " + did + " " + file + ": " + cause.getMessage()
                        + ". Check that the disk is there, writable and not full.",
                cause);
    }
}

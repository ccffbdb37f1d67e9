package bedledger.ledger.journal;

import bedledger.ledger.aside.SetAside;
import bedledger.ledger.json.CanonicalJson;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The side file that makes a batch of lines all or nothing: what is about to be written, forced before the first byte of it.
 *
 * @param offset of the batch's first byte in the journal
 * @param bytes length of the batch, line feeds included
 * @param lines number of lines
 * @param sha256 of the batch's bytes, in hexadecimal
 */
record PendingBatch(long offset, long bytes, long lines, String sha256) {

    private static final int CHUNK = 64 * 1024;

    /** Checks that it can be the head of a batch. */
    PendingBatch {
        if (offset < 0 || bytes < 1 || lines < 1) {
            throw new IllegalArgumentException("A batch has a place, a length and lines");
        }
    }

    static PendingBatch of(long offset, byte[] batch, long lines) {
        return new PendingBatch(offset, batch.length, lines, HexFormat.of().formatHex(digest().digest(batch)));
    }

    static Path pathFor(Path journal) {
        return journal.resolveSibling(journal.getFileName() + ".pending");
    }

    /** Written under another name first, so that a side file that is there is a whole one. */
    void write(Path journal) throws IOException {
        Path draft = journal.resolveSibling(journal.getFileName() + ".pending-draft");
        try (FileChannel out = FileChannel.open(
                draft, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer rest = ByteBuffer.wrap(print());
            while (rest.hasRemaining()) {
                out.write(rest);
            }
            out.force(true);
        }
        Files.move(draft, pathFor(journal), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        SetAside.forceFolder(journal.toAbsolutePath().resolveSibling("."));
    }

    static void remove(Path journal) throws IOException {
        Files.deleteIfExists(pathFor(journal));
    }

    private byte[] print() {
        JsonNode json = JsonNodeFactory.instance
                .objectNode()
                .put("offset", offset)
                .put("bytes", bytes)
                .put("lines", lines)
                .put("sha256", sha256);
        return CanonicalJson.write(json);
    }

    /**
     * Reads the side file, if there is one.
     *
     * @throws JournalFailed where it is there and is not what was written
     */
    static Optional<PendingBatch> read(Path journal) throws IOException {
        try {
            JsonNode json = CanonicalJson.readStrict(Files.readAllBytes(pathFor(journal)));
            return Optional.of(new PendingBatch(
                    json.path("offset").asLong(-1),
                    json.path("bytes").asLong(-1),
                    json.path("lines").asLong(-1),
                    json.path("sha256").asText()));
        } catch (NoSuchFileException none) {
            return Optional.empty();
        } catch (IllegalArgumentException damaged) {
            throw damaged(journal);
        }
    }

    private static JournalFailed damaged(Path journal) {
        return new JournalFailed("The journal " + journal + " was not opened: the side file " + pathFor(journal)
                + " is damaged, so nobody can tell whether the last batch was written whole."
                + " Keep a copy of both, and restore from the last backup.");
    }

    /** Says whether the journal holds the whole batch where it should be. */
    boolean isWholeIn(JournalFile file) throws IOException {
        MessageDigest digest = digest();
        ByteBuffer chunk = ByteBuffer.allocate(CHUNK);
        long position = offset;
        long end = offset + bytes;
        while (position < end) {
            chunk.clear().limit((int) Math.min(CHUNK, end - position));
            int read = file.read(chunk, position);
            if (read <= 0) {
                return false;
            }
            digest.update(chunk.flip());
            position += read;
        }
        return HexFormat.of().formatHex(digest.digest()).equals(sha256);
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform must offer SHA-256", impossible);
        }
    }
}

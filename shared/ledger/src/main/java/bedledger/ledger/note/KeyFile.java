package bedledger.ledger.note;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * A signing key on disk, readable by its owner alone.
 *
 * <p>Two lines: {@code PRIVATE+KEY+name+id+base64(type ‖ seed)} and the verifier key, see FORMAT.md.
 */
public final class KeyFile {

    private static final String SECRET_HEAD = "PRIVATE+KEY+";
    private static final Set<PosixFilePermission> OWNER_ONLY =
            EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

    /**
     * A key and, where its file is readable by others or the file system cannot say, a warning to show.
     *
     * @param key the key read
     * @param warning a sentence for people, empty where all is well
     */
    public record Loaded(SigningKey key, Optional<String> warning) {}

    private KeyFile() {}

    /**
     * Writes a key to a new file that is created with mode 0600, and forces it to the disk.
     *
     * @throws NoteRejected where a file is already there: a key is never overwritten
     * @throws UncheckedIOException where the file cannot be written; nothing is left behind
     */
    public static void save(SigningKey key, Path file) {
        boolean created = false;
        try (FileChannel channel =
                FileChannel.open(file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), ownerOnly())) {
            created = true;
            ByteBuffer bytes = ByteBuffer.wrap(print(key).getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        } catch (FileAlreadyExistsException exists) {
            throw new NoteRejected("The key was not written to " + file
                    + ": a file is already there, and a key is never overwritten. Choose another name.");
        } catch (IOException failed) {
            if (created) {
                file.toFile().delete();
            }
            throw new UncheckedIOException(
                    "The key could not be written to " + file + ": " + failed.getMessage()
                            + ". Check that the folder is there, writable and not full.",
                    failed);
        }
    }

    /**
     * Reads a key file in its one spelling.
     *
     * @throws NoteRejected where it is no key file, or its halves do not belong together
     * @throws UncheckedIOException where it cannot be read
     */
    public static Loaded load(Path file) {
        try {
            return new Loaded(parse(Files.readString(file), file), warning(file));
        } catch (IOException failed) {
            throw new UncheckedIOException(
                    "The key could not be read from " + file + ": " + failed.getMessage()
                            + ". Check the path, or take the key from your copy.",
                    failed);
        }
    }

    private static String print(SigningKey key) {
        String[] halves = key.verifier().toString().split("\\+", 3);
        byte[] typed = Ed25519.joined(new byte[] {VerifierKey.ED25519_TYPE}, key.seed());
        return SECRET_HEAD + halves[0] + "+" + halves[1] + "+" + Base64Text.print(typed) + "\n" + key.verifier() + "\n";
    }

    private static SigningKey parse(String text, Path file) {
        String[] lines = text.split("\n", -1);
        String[] parts = lines[0].split("\\+", 5);
        if (lines.length != 3 || parts.length != 5) {
            throw notAKeyFile(file);
        }
        byte[] typed = Base64Text.parse(parts[4], "secret");
        if (typed.length != 1 + Ed25519.KEY_LENGTH) {
            throw notAKeyFile(file);
        }
        SigningKey key = SigningKey.of(Arrays.copyOfRange(typed, 1, typed.length), VerifierKey.parse(lines[1]));
        if (!print(key).equals(text)) {
            throw notAKeyFile(file);
        }
        return key;
    }

    private static NoteRejected notAKeyFile(Path file) {
        return new NoteRejected("The file " + file + " was refused: it is no key file"
                + " (a line with the secret, a line with the verifier key). Take the key from your copy.");
    }

    private static Optional<String> warning(Path file) throws IOException {
        if (!posix()) {
            return Optional.of("Nobody checked who may read the key file " + file
                    + ": this file system keeps no POSIX modes. Keep it where only you can read it.");
        }
        Set<PosixFilePermission> mode = EnumSet.copyOf(OWNER_ONLY);
        mode.addAll(Files.getPosixFilePermissions(file));
        mode.removeAll(OWNER_ONLY);
        mode.remove(PosixFilePermission.OWNER_EXECUTE);
        if (mode.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of("Others on this computer may use the key file " + file + " (mode "
                + PosixFilePermissions.toString(Files.getPosixFilePermissions(file))
                + "): whoever reads it can sign in your name. Run: chmod 600 " + file);
    }

    private static FileAttribute<?>[] ownerOnly() {
        return posix()
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
                : new FileAttribute<?>[0];
    }

    private static boolean posix() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    }
}

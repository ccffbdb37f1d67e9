package bedledger.ledger.note;

import bedledger.ledger.tree.Hash;
import java.util.regex.Pattern;

/**
 * The head of a log, C2SP tlog-checkpoint, without extension lines.
 *
 * @param origin names the log; the same as the name of the key that signs it
 * @param size entries in the log
 * @param rootHash Merkle tree hash over them
 */
public record Checkpoint(String origin, long size, Hash rootHash) {

    private static final Pattern DECIMAL = Pattern.compile("0|[1-9][0-9]{0,18}");

    /** Checks origin and size. */
    public Checkpoint {
        if (!KeyName.allowed(origin)) {
            throw refused(origin, "the origin must be a key name, without spaces and +");
        }
        if (size < 0) {
            throw refused(Long.toString(size), "a size is 0 or more");
        }
    }

    /**
     * Reads the text of a checkpoint in its one spelling.
     *
     * @throws NoteRejected for anything else, extension lines included
     */
    public static Checkpoint parse(String text) {
        String[] lines = text.split("\n", -1);
        if (lines.length != 4 || !lines[3].isEmpty()) {
            throw refused(text, "it is three lines: origin, size, root");
        }
        if (!DECIMAL.matcher(lines[1]).matches()) {
            throw refused(lines[1], "the size is a plain whole number");
        }
        try {
            return new Checkpoint(lines[0], Long.parseLong(lines[1]), Hash.parseBase64(lines[2]));
        } catch (NumberFormatException tooLarge) {
            throw refused(lines[1], "the size is beyond " + Long.MAX_VALUE);
        } catch (IllegalArgumentException notAHash) {
            throw refused(lines[2], "the root is a SHA-256 value in base64");
        }
    }

    /** The three lines that are signed. */
    public String text() {
        return origin + "\n" + size + "\n" + rootHash.base64() + "\n";
    }

    /** The root as 32 bytes, for readers that keep clear of the tree package. */
    public byte[] rootBytes() {
        return rootHash.bytes();
    }

    private static NoteRejected refused(String entered, String why) {
        return new NoteRejected("The checkpoint \"" + entered.strip().replace("\n", "⏎") + "\" was refused: " + why
                + " (C2SP tlog-checkpoint). Copy the whole file again.");
    }
}

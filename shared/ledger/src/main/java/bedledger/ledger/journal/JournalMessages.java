package bedledger.ledger.journal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** What the journal says when it cannot: what was refused, where, what is still safe, what to do. */
final class JournalMessages {

    private JournalMessages() {}

    static JournalFailed notOpened(Path path, IOException cause) {
        return new JournalFailed(
                "The journal " + path + " could not be opened for writing: " + why(cause)
                        + ". Nothing was changed. Check the path, and that the folder may be written to.",
                cause);
    }

    static JournalFailed openElsewhere(Path path) {
        return new JournalBusy("The journal " + path
                + " was not opened: another program is writing to it. Close the book there first.");
    }

    static JournalFailed notRead(Path path, IOException cause) {
        return new JournalFailed(
                "The journal " + path + " could not be read: " + why(cause)
                        + ". Check the path and the disk; your last backup holds a copy.",
                cause);
    }

    static JournalFailed putBack(Path path, long length, int lines, int bytes, IOException cause) {
        return new JournalFailed(
                "The journal " + path + " did not take " + entries(lines) + " (" + bytes + " bytes at byte " + length
                        + "): " + why(cause) + ". It was put back to its " + length
                        + " bytes, and nothing of this was recorded. Make room on the disk and write it again.",
                cause);
    }

    static JournalFailed notPutBack(Path path, long length, int bytes, IOException cause) {
        return new JournalFailed(
                "The journal " + path + " did not take " + bytes + " bytes at byte " + length + ": " + why(cause)
                        + ". It could not be put back to its " + length + " bytes either. Nothing was acknowledged;"
                        + " close the book, make room on the disk, and open it again: the unfinished end is then set aside.",
                cause);
    }

    static JournalFailed doubtful(Path path) {
        return new JournalFailed(
                "The journal " + path + " takes nothing more: an earlier write failed and its end is in"
                        + " doubt. Close the book and open it again.");
    }

    static JournalFailed notClosed(Path path, IOException cause) {
        return new JournalFailed(
                "The journal " + path + " could not be closed: " + why(cause)
                        + ". Every acknowledged entry was already on the disk. Check the disk.",
                cause);
    }

    static void requireLine(byte[] line) {
        if (line.length == 0 || line.length > Lines.LONGEST) {
            throw new IllegalArgumentException(
                    "A journal line of " + line.length + " bytes was refused: a line has 1 to " + Lines.LONGEST
                            + " bytes. Split the act, or attach what is long as a document.");
        }
        for (byte next : line) {
            if (next == '\n') {
                throw new IllegalArgumentException("A journal line with a line feed in it was refused: one entry is one"
                        + " line. Write it as canonical JSON first.");
            }
        }
    }

    private static String entries(int lines) {
        return lines == 1 ? "1 entry" : lines + " entries";
    }

    private static String why(IOException cause) {
        if (cause instanceof AccessDeniedException) {
            return "it is read-only for you";
        }
        if (cause instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        String message = cause.getMessage();
        return message == null ? cause.getClass().getSimpleName() : message;
    }
}

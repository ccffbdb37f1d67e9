package bedledger.ledger.store;

import bedledger.ledger.journal.JournalFailed;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.SplittableRandom;

/**
 * A program that opens a book, writes one commit, closes it, and says what came of it: a word on success, else the message that
 * people would see, with exit code 1.
 *
 * <p>Arguments: the book's folder, how many entries the commit has (1 if not given), how many commits (1).
 */
public final class OpensBook {
    public static void main(String[] arguments) throws IOException {
        BookFolder folder = new BookFolder(Path.of(arguments[0]));
        int entries = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
        int commits = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 1;
        try (FileOutputStream out = new FileOutputStream(FileDescriptor.out)) {
            try (Ledger ledger = Ledger.open(folder)) {
                Pen pen = new Pen(ledger, new SplittableRandom(ledger.size()), "opens-" + ledger.size());
                for (int commit = 0; commit < commits; commit++) {
                    pen.write(entries);
                    say(out, "wrote entry " + ledger.size());
                }
            } catch (BookUnusable | JournalFailed refused) {
                say(out, refused.getClass().getSimpleName() + ": " + refused.getMessage());
                System.exit(1);
            }
        }
    }

    private static void say(FileOutputStream out, String text) throws IOException {
        out.write((text + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private OpensBook() {}
}

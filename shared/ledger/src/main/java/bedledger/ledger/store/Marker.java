package bedledger.ledger.store;

import bedledger.ledger.aside.SetAside;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.note.VerifierKey;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;

/** The file that marks a folder as a book: {@code bedledger book}, {@code format 1}, {@code key} and the book's verifier key. */
final class Marker {
    private static final String FIRST = "bedledger book";
    private static final String SECOND = "format ";
    private static final String THIRD = "key ";
    private static final int FORMAT = 1;

    static VerifierKey read(BookFolder folder) {
        List<String> lines = lines(folder);
        if (lines.size() < 3
                || !lines.get(0).equals(FIRST)
                || !lines.get(1).matches(SECOND + "[0-9]{1,6}")
                || !lines.get(2).startsWith(THIRD)) {
            throw damaged(folder, "it is not what a book is marked with");
        }
        int format = Integer.parseInt(lines.get(1).substring(SECOND.length()));
        if (format > FORMAT) {
            throw new BookUnusable("The book in '" + folder.root() + "' has format " + format + "; this program knows "
                    + FORMAT + ". A newer Bedledger wrote it: update, then try again. Nothing was changed.");
        }
        try {
            return VerifierKey.parse(lines.get(2).substring(THIRD.length()));
        } catch (NoteRejected notAKey) {
            throw damaged(folder, String.valueOf(notAKey.getMessage()));
        }
    }

    private static List<String> lines(BookFolder folder) {
        if (!Files.isRegularFile(folder.marker())) {
            throw new BookUnusable("'" + folder.root() + "' is not a book: it has no file " + BookFolder.MARKER
                    + ". Give the book's folder with --book, or start one: bedledger new FOLDER --farm NAME");
        }
        try {
            return Files.readString(folder.marker(), StandardCharsets.ISO_8859_1)
                    .lines()
                    .toList();
        } catch (IOException unreadable) {
            throw new BookUnusable("The book in '" + folder.root() + "' cannot be read: " + unreadable.getMessage()
                    + ". Check the disk and your rights to the folder.");
        }
    }

    private static BookUnusable damaged(BookFolder folder, String why) {
        return new BookUnusable("'" + folder.root() + "' cannot be used as a book: its file " + BookFolder.MARKER
                + " is damaged (" + why + "). Nothing was changed. Take that file from your backup.");
    }

    /** Written under another name and forced first, so that a marker that is there is a whole one, also on a full disk. */
    static void write(BookFolder folder, VerifierKey key) throws IOException {
        Path draft = folder.root().resolve(BookFolder.MARKER + "-draft");
        String text = FIRST + "\n" + SECOND + FORMAT + "\n" + THIRD + key + "\n";
        try (FileChannel out = FileChannel.open(
                draft, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer rest = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (rest.hasRemaining()) {
                out.write(rest);
            }
            out.force(true);
        }
        Files.move(draft, folder.marker(), StandardCopyOption.ATOMIC_MOVE);
        SetAside.forceFolder(folder.root());
    }

    private Marker() {}
}

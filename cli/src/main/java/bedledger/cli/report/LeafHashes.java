package bedledger.cli.report;

import bedledger.language.Entry;
import bedledger.ledger.journal.Journal;
import bedledger.ledger.tree.Merkle;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Base64;

/** The leaf hash of each entry as read from the journal's own bytes, kept as 32 bytes an entry; and moments in the book's time zone. */
final class LeafHashes {
    private static final int LENGTH = 32;
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    private final byte[] hashes;
    private final ZoneId zone;

    private LeafHashes(byte[] hashes, ZoneId zone) {
        this.hashes = hashes;
        this.zone = zone;
    }

    /** From hashes of 32 bytes each, one after another. */
    static LeafHashes of(byte[] hashes, ZoneId zone) {
        return new LeafHashes(hashes, zone);
    }

    static LeafHashes read(Path journal, ZoneId zone) {
        ByteArrayOutputStream hashes = new ByteArrayOutputStream();
        Journal.read(
                journal,
                0,
                (offset, line) -> hashes.writeBytes(Merkle.leaf(line).bytes()));
        return new LeafHashes(hashes.toByteArray(), zone);
    }

    /** In base64, as a checkpoint writes its root. */
    String of(long entry) {
        byte[] hash = new byte[LENGTH];
        System.arraycopy(hashes, Math.toIntExact((entry - 1) * LENGTH), hash, 0, LENGTH);
        return Base64.getEncoder().encodeToString(hash);
    }

    /** When an entry was written, to the minute. */
    String moment(Entry entry) {
        return MOMENT.format(entry.writtenAt().atZone(zone));
    }
}

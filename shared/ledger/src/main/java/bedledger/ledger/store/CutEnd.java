package bedledger.ledger.store;

import bedledger.ledger.journal.Journal;
import bedledger.ledger.journal.Reading;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/**
 * Looks at an unfinished end of a journal before it is set aside: behind a dead writer's last line there is nothing that anyone knows
 * of; behind a cut there is.
 */
final class CutEnd {
    static void requireNone(BookFolder folder) {
        if (!Files.exists(folder.journal()) || Journal.unacknowledged(folder.journal()) == 0) {
            return;
        }
        // The database first: a writer at work in another program is ahead in the journal, never in the database.
        Head stored = stored(folder);
        Reading reading = Journal.read(folder.journal(), 0, (offset, line) -> {});
        SealedHead.in(folder).requireReachedBy(reading.lines());
        if (stored != null && stored.journalBytes() > reading.end()) {
            throw Disagreement.journalBehind(reading.end(), stored);
        }
    }

    private static @Nullable Head stored(BookFolder folder) {
        if (!Files.exists(folder.databaseFile())) {
            return null;
        }
        // H2 keeps the lock on a damaged file that it could not open, and the opening proper would then find it locked.
        try (Connection connection = Database.forReading(folder, ";FILE_LOCK=NO")) {
            return HeadRow.read(connection);
        } catch (SQLException openElsewhereOrDamaged) {
            // Both are for the opening itself to say.
            return null;
        }
    }

    private CutEnd() {}
}

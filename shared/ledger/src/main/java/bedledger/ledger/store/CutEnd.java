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
        Reading reading = Journal.read(folder.journal(), 0, (offset, line) -> {});
        SealedHead.in(folder).requireReachedBy(reading.lines());
        Head stored = stored(folder);
        if (stored != null && stored.journalBytes() > reading.end()) {
            throw Disagreement.journalBehind(reading.end(), stored);
        }
    }

    private static @Nullable Head stored(BookFolder folder) {
        if (!Files.exists(folder.databaseFile())) {
            return null;
        }
        try (Connection connection = Database.forReading(folder)) {
            return HeadRow.read(connection);
        } catch (SQLException openElsewhereOrDamaged) {
            // Both are for the opening itself to say.
            return null;
        }
    }

    private CutEnd() {}
}

package bedledger.domain;

import bedledger.language.Entry;
import bedledger.language.Problem;
import bedledger.language.Refused;
import bedledger.ledger.entry.Line;
import bedledger.ledger.entry.UnreadableEntry;
import java.util.List;

/** What cannot be read again must never be sealed: it would make the whole book unreadable. */
final class ReadBack {
    static void require(Entry entry) {
        try {
            if (Line.read(Line.write(entry)).equals(entry)) {
                return;
            }
        } catch (UnreadableEntry | IllegalArgumentException unreadable) {
            throw refused(entry, "it holds what cannot be kept: " + unreadable.getMessage());
        }
        throw refused(entry, "it would not be read again as it was written");
    }

    private static Refused refused(Entry entry, String why) {
        return new Refused(List.of(new Problem(entry.kind().name(), "", why, "type it again")));
    }

    private ReadBack() {}
}

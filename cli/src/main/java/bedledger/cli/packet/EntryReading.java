package bedledger.cli.packet;

import bedledger.ledger.entry.UnreadableEntry;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.Members;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/** Makes entries of the lines, by the fixed table of names; stops at the first that cannot be read. */
final class EntryReading {
    private static final int LONGEST = 8 * 1024 * 1024;

    private final Members members;
    private final Recorded recorded;

    EntryReading(Members members, Recorded recorded) {
        this.members = members;
        this.recorded = recorded;
    }

    /** All entries; nothing where one could not be read, which is then among the differences. */
    Optional<Recorded> run(List<Difference> differences) throws IOException {
        if (!members.has(MemberNames.LINES)) {
            return Optional.empty();
        }
        try (InputStream in = new BufferedInputStream(members.open(MemberNames.LINES), 1 << 16)) {
            ByteArrayOutputStream line = new ByteArrayOutputStream();
            for (int next = in.read(); next >= 0; next = in.read()) {
                if (next != '\n' && line.size() <= LONGEST) {
                    line.write(next);
                } else if (next == '\n') {
                    recorded.add(line.toByteArray());
                    line.reset();
                } else {
                    return Optional.empty(); // a line too long was named by the verifier
                }
            }
            return Optional.of(recorded);
        } catch (UnreadableEntry unreadable) {
            differences.add(cannotBeRead(recorded.size() + 1, String.valueOf(unreadable.getMessage())));
        } catch (IllegalArgumentException
                | IllegalStateException
                | ArithmeticException
                | java.time.DateTimeException bad) {
            differences.add(cannotBeRead(recorded.size() + 1, "a value that cannot be: " + bad.getMessage()));
        }
        return Optional.empty();
    }

    private static Difference cannotBeRead(long entry, String why) {
        return Difference.at(
                entry,
                MemberNames.LINES + ", line " + entry,
                "entry-unreadable",
                SealCheck.shown(why),
                "an entry of a kind that this program knows");
    }
}

package bedledger.cli.packet;

import bedledger.ledger.entry.UnreadableEntry;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.Members;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/** Makes entries of the lines, by the fixed table of names; stops at the first that cannot be read. */
final class EntryReading {
    private static final int LONGEST = 8 * 1024 * 1024;
    private static final int CHUNK = 1 << 16;

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
        try (InputStream in = members.open(MemberNames.LINES)) {
            return read(in) ? Optional.of(recorded) : Optional.empty();
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

    /** Whether every line could be taken; a line too long was named by the verifier. */
    private boolean read(InputStream in) throws IOException {
        byte[] chunk = new byte[CHUNK];
        ByteArrayOutputStream begun = new ByteArrayOutputStream();
        for (int end = in.read(chunk); end >= 0; end = in.read(chunk)) {
            int from = 0;
            for (int at = 0; at < end; at++) {
                if (chunk[at] == '\n') {
                    begun.write(chunk, from, at - from);
                    recorded.add(begun.toByteArray());
                    begun.reset();
                    from = at + 1;
                }
            }
            begun.write(chunk, from, end - from);
            if (begun.size() > LONGEST) {
                return false;
            }
        }
        recorded.finish();
        return true;
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

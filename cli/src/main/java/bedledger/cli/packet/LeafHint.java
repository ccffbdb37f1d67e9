package bedledger.cli.packet;

import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.Members;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.LeafSource;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where to look first, once the seal fails: the register of the packet's report shows a hash for each line.
 *
 * <p>It is not signed, so it proves nothing; but whoever changed a line may have left it as it was.
 */
final class LeafHint {
    private static final Pattern ROW = Pattern.compile("<tr [^>]{0,80}id=\"entry-([0-9]{1,9})\"");
    private static final Pattern HASH = Pattern.compile("<td class=\"hash\"><code>([A-Za-z0-9+/]{43}=)</code>");

    static void add(Members members, Recorded recorded, List<Difference> differences) throws IOException {
        if (!members.has(MemberNames.REPORT)) {
            return;
        }
        LeafSource leaves = recorded.source();
        try (BufferedReader report =
                new BufferedReader(new InputStreamReader(members.open(MemberNames.REPORT), StandardCharsets.UTF_8))) {
            long entry = 0;
            for (String line = report.readLine(); line != null; line = report.readLine()) {
                Matcher row = ROW.matcher(line);
                entry = row.find() ? Long.parseLong(row.group(1)) : entry;
                Matcher hash = HASH.matcher(line);
                if (hash.find() && !agrees(entry, hash.group(1), recorded, leaves)) {
                    differences.add(difference(entry, hash.group(1)));
                    return;
                }
            }
        }
    }

    private static boolean agrees(long entry, String base64, Recorded recorded, LeafSource leaves) {
        return entry >= 1 && entry <= recorded.size() && leaves.leaf(entry - 1).equals(Hash.parseBase64(base64));
    }

    private static Difference difference(long entry, String hash) {
        return new Difference(
                entry,
                entry,
                "leaf-differs",
                MemberNames.REPORT,
                "the hash " + hash + " for it, which its line in " + MemberNames.LINES + " has not",
                "the same",
                "Look at this entry first. The report is not signed and shows only what was overlooked.");
    }

    private LeafHint() {}
}

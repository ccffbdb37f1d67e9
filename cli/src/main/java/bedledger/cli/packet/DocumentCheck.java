package bedledger.cli.packet;

import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.Members;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;

/** Holds each document against its hash in the log, and names the entries whose document is not there. */
final class DocumentCheck {
    private final Members members;
    private final Recorded recorded;

    DocumentCheck(Members members, Recorded recorded) {
        this.members = members;
        this.recorded = recorded;
    }

    void run(List<Difference> differences, Said said) throws IOException {
        Set<String> named = new HashSet<>();
        for (Entry entry : recorded.attached()) {
            if (entry.fact() instanceof BookKeeping.DocumentAttached attached) {
                String name = MemberNames.DOCUMENTS + attached.document();
                named.add(name);
                check(entry, name, differences);
            }
        }
        for (String name : members.names()) {
            if (MemberNames.isDocument(name) && !named.contains(name)) {
                differences.add(Difference.in(name, "document-unknown", "a document", "none, for no entry names it"));
            }
        }
        said.documents(named.size());
    }

    private void check(Entry entry, String name, List<Difference> differences) throws IOException {
        if (!members.has(name)) {
            differences.add(
                    Difference.at(entry.number(), name, "document-absent", "no such file", "the attached document"));
            return;
        }
        String hash = hash(name);
        if (!name.endsWith(hash)) {
            differences.add(Difference.at(
                    entry.number(),
                    name,
                    "document-differs",
                    "a file with the hash " + hash,
                    "one with its name as hash"));
        }
    }

    private String hash(String name) throws IOException {
        try (InputStream in = members.open(name)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            new DigestInputStream(in, digest).transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException everyJdkHasIt) {
            throw new IllegalStateException(everyJdkHasIt);
        }
    }
}

package bedledger.cli.packet;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.language.BookKeeping;
import bedledger.language.DocumentId;
import bedledger.language.Entry;
import bedledger.ledger.journal.Journal;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.ConsistencyProof;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.PacketZip;
import bedledger.ledger.packet.PacketZip.Content;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.Proofs;
import bedledger.ledger.verify.Evidence;
import bedledger.ledger.verify.Source;
import bedledger.ledger.verify.Verdict;
import bedledger.ledger.verify.Verifier;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Makes a packet of a book: the lines as they are, and what this program works out from them. */
final class PacketWriter {
    private final BookFolder folder;
    private final SignedNote note;
    private final Recorded recorded = Recorded.whole();
    private final long end;
    private final String key;
    private final Pages pages;
    private final List<String> absent = new ArrayList<>();

    /** Reads the book as it stands under this checkpoint, and what was written after it. */
    PacketWriter(BookFolder folder, SignedNote note) {
        this.folder = folder;
        this.note = note;
        this.key = folder.verifierKey().toString();
        long[] read = {0};
        Journal.read(folder.journal(), 0, (offset, line) -> {
            recorded.add(line);
            read[0] = offset + line.length + 1;
        });
        this.end = read[0];
        BookKeeping.BookOpened opened = recorded.opened()
                .orElseThrow(() -> new Failure(
                        Exit.NO_INPUT,
                        "The book in '" + folder.root() + "' has no first entry. Take it from your backup."));
        this.pages = new Pages(recorded, opened, key);
    }

    Pages pages() {
        return pages;
    }

    Recorded recorded() {
        return recorded;
    }

    /** The bytes of one line as they are stored, whatever revision they were written in. */
    byte[] line(long number) {
        byte[][] found = {{}};
        long[] at = {0};
        Journal.read(folder.journal(), 0, (offset, line) -> {
            if (++at[0] == number) {
                found[0] = line;
            }
        });
        return found[0];
    }

    /** Documents that the log names and the book's folder has not, as hash and entry. */
    List<String> absent() {
        return absent;
    }

    /** The proof that the log goes on from an older checkpoint; refused where it does not. */
    ConsistencyProof since(SignedNote older) {
        older.verify(List.of(folder.verifierKey()));
        Checkpoint then = Checkpoint.parse(older.text());
        long now = Checkpoint.parse(note.text()).size();
        if (then.size() < 1 || then.size() > now) {
            throw refused("it covers " + then.size() + " entries, and the book's checkpoint " + now);
        }
        if (!recorded.root(then.size()).equals(then.rootHash())) {
            throw refused("the first " + then.size() + " entries of the book are not the ones it was signed over");
        }
        List<Hash> path = Proofs.consistency(then.size(), now, recorded.source());
        return new ConsistencyProof(then.size(), path, note);
    }

    private static Failure refused(String why) {
        return new Failure(
                Exit.REFUSED,
                "The book does not go on from that checkpoint: " + why
                        + ". Nothing was written. Ask: bedledger verify");
    }

    /** Writes everything into an empty file. */
    void write(FileChannel file, Optional<ConsistencyProof> consistency) throws IOException {
        LocalDateTime time = LocalDateTime.ofInstant(recorded.last().writtenAt(), ZoneOffset.UTC);
        PacketZip zip = new PacketZip(file, time);
        zip.add(MemberNames.README, out -> out.write(Pages.handCheck()));
        zip.add(MemberNames.CHECKPOINT, out -> out.write(note.toBytes()));
        zip.add(MemberNames.KEY, out -> out.write((key + "\n").getBytes(StandardCharsets.UTF_8)));
        if (consistency.isPresent()) {
            zip.add(
                    MemberNames.CONSISTENCY,
                    out -> out.write(consistency.get().text().getBytes(StandardCharsets.UTF_8)));
        }
        zip.add(MemberNames.LINES, out -> {
            try (InputStream in = lines()) {
                in.transferTo(out);
            }
        });
        for (Map.Entry<String, Content> page : pages.tables().entrySet()) {
            zip.add(page.getKey(), page.getValue());
        }
        Pages.Report report = pages.report(note, verdict());
        zip.add(MemberNames.REPORT, report.page());
        if (report.isOnPaper()) {
            zip.add(MemberNames.PAPER, report.paper());
        }
        for (String document : documents()) {
            Path kept = folder.documents().resolve(document);
            zip.add(MemberNames.DOCUMENTS + document, out -> Files.copy(kept, out));
        }
        zip.finish();
    }

    private Verdict verdict() {
        return Verifier.verify(Evidence.of(
                new Source(MemberNames.LINES, this::lines),
                new Source(MemberNames.CHECKPOINT, () -> new ByteArrayInputStream(note.toBytes())),
                key));
    }

    /** The complete lines that were read; what was written to the journal since is for the next packet. */
    private InputStream lines() throws IOException {
        return new Beginning(Files.newInputStream(folder.journal()), end);
    }

    private Set<String> documents() {
        Set<String> there = new TreeSet<>();
        for (Entry entry : recorded.attached()) {
            if (entry.fact() instanceof BookKeeping.DocumentAttached attached) {
                DocumentId document = attached.document();
                if (Files.isRegularFile(folder.documents().resolve(document.toString()))) {
                    there.add(document.toString());
                } else {
                    absent.add(document + " of entry " + entry.number());
                }
            }
        }
        return there;
    }
}

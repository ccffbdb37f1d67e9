package bedledger.cli.packet;

import bedledger.cli.packet.InspectView.Inspected;
import bedledger.language.BookKeeping;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.Members;
import bedledger.ledger.packet.NotAPacket;
import bedledger.ledger.verify.Verdict;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks through one packet, in the order in which things rest on each other, and believes nothing but lines and signature. */
final class Inspection {
    private final Members members;
    private final Given given;
    private final List<Difference> differences = new ArrayList<>();
    private final Said said = new Said();
    private Optional<Recorded> recorded = Optional.empty();
    private Optional<BookKeeping.BookOpened> opened = Optional.empty();
    private Optional<SignedNote> note = Optional.empty();
    private String key = "";
    private boolean keyGiven;
    private long entries;
    private long sealed;
    private long heldSince;
    private boolean recomputed;
    private Optional<InspectView.Counts> counts = Optional.empty();

    private Inspection(Members members, Given given) {
        this.members = members;
        this.given = given;
    }

    /** Inspects; whatever the packet holds, the answer is a view and no exception. */
    static Inspected of(String file, Members members, Given given) {
        Inspection inspection = new Inspection(members, given);
        try {
            members.readThrough();
            inspection.run();
        } catch (NotAPacket broken) {
            inspection.differences.add(broken(broken));
        } catch (IOException failed) {
            inspection.differences.add(
                    Difference.in("the packet", "unreadable", String.valueOf(failed.getMessage()), "a file"));
        }
        return inspection.view(file);
    }

    static Difference broken(NotAPacket broken) {
        return Difference.in(broken.place(), "not-a-packet", broken.found(), broken.expected());
    }

    private void run() throws IOException {
        MemberNames.ALWAYS.stream()
                .filter(name -> !members.has(name))
                .forEach(name -> differences.add(Difference.in(name, "missing", "no such file", "one")));
        readKey();
        SealCheck seal = new SealCheck(members, key, given.sinceOf(log()));
        Verdict own = seal.run(differences, said);
        entries = own.entries();
        sealed = own.sealed();
        heldSince = seal.heldSince();
        note = readNote();
        EntryReading reading = new EntryReading(members, given.sealOnly() ? Recorded.passing() : Recorded.whole());
        recorded = reading.run(differences);
        opened = recorded.flatMap(Recorded::opened);
        if (recorded.isEmpty() || entries == 0) {
            return;
        }
        if (opened.isEmpty()) {
            differences.add(Difference.at(
                    1,
                    MemberNames.LINES + ", line 1",
                    "no-book",
                    recorded.get().first().kind().name(),
                    "the opening of a book"));
            return;
        }
        if (zone(opened.get()).isEmpty()) {
            differences.add(Difference.at(
                    1,
                    MemberNames.LINES + ", line 1",
                    "entry-unreadable",
                    "the time zone " + SealCheck.shown(opened.get().timeZone()),
                    "one that this Java knows"));
            return;
        }
        new DocumentCheck(members, recorded.get()).run(differences, said);
        if (given.sealOnly()) {
            return;
        }
        PageCheck pages = new PageCheck(members, recorded.get(), opened.get(), key);
        pages.run(note, own, differences, said);
        counts = pages.counts();
        recomputed = pages.recomputed();
    }

    private String log() {
        return key.split("\\+", 2)[0];
    }

    private void readKey() throws IOException {
        String text = new String(members.bytes(MemberNames.KEY), StandardCharsets.UTF_8);
        key = text.endsWith("\n") ? text.substring(0, text.length() - 1) : text;
        if (members.has(MemberNames.KEY) && (!text.endsWith("\n") || key.contains("\n"))) {
            differences.add(
                    Difference.in(MemberNames.KEY, "key-unreadable", "something else than one line", "one line"));
        }
        keyGiven = given.keys().contains(key);
        if (!given.keys().isEmpty() && !keyGiven) {
            differences.add(
                    Difference.in(MemberNames.KEY, "another-key", SealCheck.shown(key), "the key that you gave"));
        }
    }

    private Optional<SignedNote> readNote() throws IOException {
        try {
            SignedNote read = SignedNote.parse(members.bytes(MemberNames.CHECKPOINT));
            Checkpoint.parse(read.text());
            return Optional.of(read);
        } catch (NoteRejected reportedBySealCheck) {
            return Optional.empty();
        }
    }

    private List<String> countersigned() {
        List<String> by = new ArrayList<>();
        note.ifPresent(
                signed -> Countersigned.find(MemberNames.CHECKPOINT, signed, given.cosigners(), by, differences));
        for (String kept : given.sinceOf(log())) {
            Countersigned.find(kept, given.cosigners(), by, differences);
        }
        return by;
    }

    private Inspected view(String file) {
        List<String> by = countersigned();
        boolean agrees = differences.isEmpty();
        boolean practice = opened.map(BookKeeping.BookOpened::practice).orElse(false);
        return new Inspected(
                file,
                "packet",
                opened.map(BookKeeping.BookOpened::farm).orElse(null),
                practice,
                agrees,
                entries,
                sealed,
                opened.map(this::lastWritten).orElse(null),
                key.isEmpty() ? null : SealCheck.shown(key),
                keyGiven,
                heldSince,
                by,
                (int) members.names().stream().filter(MemberNames::isDocument).count(),
                recomputed,
                counts.orElse(null),
                agrees ? said.proved(entries, sealed, heldSince, keyGiven, by) : List.of(),
                agrees ? said.notProved(entries, sealed, heldSince, keyGiven, practice, recomputed) : List.of(),
                differences);
    }

    private String lastWritten(BookKeeping.BookOpened book) {
        return zone(book)
                .flatMap(zone -> recorded.map(
                        all -> LocalDate.ofInstant(all.last().writtenAt(), zone).toString()))
                .orElse("");
    }

    private static Optional<ZoneId> zone(BookKeeping.BookOpened book) {
        try {
            return Optional.of(ZoneId.of(book.timeZone()));
        } catch (DateTimeException unknown) {
            return Optional.empty();
        }
    }
}

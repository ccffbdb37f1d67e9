package bedledger.cli.packet;

import bedledger.cli.Bedledger;
import bedledger.language.BookKeeping;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.Members;
import bedledger.ledger.packet.PacketZip.Content;
import bedledger.ledger.verify.Verdict;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes findings, tables, report and hand-check page again and compares them with the packet's, byte for byte. */
final class PageCheck {
    private static final int HEAD = 200;
    private static final Pattern PROGRAM = Pattern.compile("\"program\" : \"([A-Za-z0-9. -]{1,40})\"");

    private final Members members;
    private final Recorded recorded;
    private final BookKeeping.BookOpened opened;
    private final String key;
    private boolean recomputed;
    private Optional<Pages.Report> report = Optional.empty();
    private Optional<InspectView.Counts> counts = Optional.empty();

    PageCheck(Members members, Recorded recorded, BookKeeping.BookOpened opened, String key) {
        this.members = members;
        this.recorded = recorded;
        this.opened = opened;
        this.key = key;
    }

    void run(Optional<SignedNote> note, Verdict own, List<Difference> differences, Said said) throws IOException {
        if (own.agrees()) {
            SealCheck.consistency(members, recorded, own.sealed(), differences);
        } else {
            LeafHint.add(members, recorded, differences);
        }
        Map<String, Content> pages = new LinkedHashMap<>();
        try {
            Pages made = new Pages(recorded, opened, key);
            recomputed = true;
            counts = made.counts();
            pages.putAll(made.tables());
            // Over lines that were changed the report would differ everywhere; the seal has said so already.
            if (own.agrees() && note.isPresent()) {
                report = Optional.of(made.report(note.get(), own));
                pages.put(MemberNames.REPORT, report.get().page());
            }
        } catch (RuntimeException cannot) {
            differences.add(cannotBeMade(MemberNames.FINDINGS, cannot));
        }
        for (Map.Entry<String, Content> page : pages.entrySet()) {
            compare(page.getKey(), page.getValue(), differences);
        }
        compare(MemberNames.README, out -> out.write(Pages.handCheck()), differences);
        if (report.isPresent() && differences.isEmpty()) {
            paper(report.get(), differences);
            said.paper(members.has(MemberNames.PAPER));
        }
        said.pages(pages.size());
    }

    /** Comes last, since it takes longest, and only where nothing else differs. */
    private void paper(Pages.Report made, List<Difference> differences) throws IOException {
        boolean there = members.has(MemberNames.PAPER);
        if (!made.isOnPaper() && there) {
            differences.add(Difference.in(
                    MemberNames.PAPER, "page-unknown", "a file", "none, for the report is too long for paper"));
        } else if (made.isOnPaper() && !there) {
            differences.add(Difference.in(MemberNames.PAPER, "missing", "no such file", "one"));
        } else if (there) {
            compare(MemberNames.PAPER, made.paper(), differences);
        }
    }

    /** Whether the pages could be made at all. */
    boolean recomputed() {
        return recomputed;
    }

    Optional<InspectView.Counts> counts() {
        return counts;
    }

    private void compare(String name, Content made, List<Difference> differences) throws IOException {
        if (!members.has(name)) {
            return;
        }
        try (InputStream in = members.open(name)) {
            Comparison comparison = new Comparison(in);
            made.writeTo(comparison);
            Optional<Comparison.Line> line = comparison.finish();
            if (line.isPresent()) {
                differences.add(differs(name, line.get()));
            }
        } catch (RuntimeException cannot) {
            differences.add(cannotBeMade(name, cannot));
        }
    }

    private Difference differs(String name, Comparison.Line line) throws IOException {
        boolean paper = name.equals(MemberNames.PAPER);
        return new Difference(
                0,
                0,
                "page-differs",
                name + (paper ? ", byte " + line.at() : ", line " + line.number()),
                paper ? "other bytes" : line.found(),
                paper ? "those that this program makes of the lines" : line.expected(),
                paper ? "Go by report.html, which agrees. " + whatToDo() : whatToDo());
    }

    /** Another version may work things out otherwise; which one made the packet is its own word. */
    private String whatToDo() throws IOException {
        if (!members.has(MemberNames.FINDINGS)) {
            return Difference.ASK;
        }
        try (InputStream in = members.open(MemberNames.FINDINGS)) {
            String head = new String(in.readNBytes(HEAD), StandardCharsets.UTF_8);
            Matcher made = PROGRAM.matcher(head);
            String ours = "bedledger " + Bedledger.VERSION;
            return made.find() && !made.group(1).equals(ours)
                    ? "It says that it was made by " + made.group(1) + "; this is " + ours
                            + ", which may work things out otherwise. Inspect it with that version."
                    : Difference.ASK;
        }
    }

    /** Folds are total over what the writer lets in; a hostile log may hold what no writer lets in. */
    private static Difference cannotBeMade(String name, RuntimeException cannot) {
        return Difference.in(
                name,
                "page-not-made",
                "entries from which it cannot be worked out (" + SealCheck.shown(String.valueOf(cannot.getMessage()))
                        + ")",
                "entries as this program writes them");
    }
}

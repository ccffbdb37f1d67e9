package bedledger.cli.packet;

import bedledger.cli.Bedledger;
import bedledger.cli.prove.Check;
import bedledger.cli.prove.Judging;
import bedledger.cli.read.Beds;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReturnedCommand;
import bedledger.cli.report.SealedReport;
import bedledger.language.BookKeeping;
import bedledger.language.Farm;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.PacketZip.Content;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.verify.Verdict;
import bedledger.projections.findings.Findings;
import bedledger.projections.findings.Outcome;
import bedledger.projections.findings.RuleBook;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What this program works out from the lines and the checkpoint, and from nothing else: the same input gives the same bytes.
 *
 * <p>The packet is written from it, and the inspection makes it again to compare. The day asked is the one on which the last entry was
 * written.
 */
final class Pages {
    private static final String HAND_CHECK = "hand-check.txt";
    /** Bytes of the report's page up to which it is laid out for paper as well; what is longer takes minutes, and nobody prints it. */
    private static final long MOST_ON_PAPER = 2L * 1024 * 1024;

    private final ReadBook book;
    private final LocalDate day;
    private final Instant made;
    private final byte[] leaves;
    private final String key;
    private final Findings found;

    /** Takes what was recorded, which must begin with the opening of a book. */
    Pages(Recorded recorded, BookKeeping.BookOpened opened, String key) {
        this.made = recorded.last().writtenAt();
        this.day = LocalDate.ofInstant(made, ZoneId.of(opened.timeZone()));
        this.book = new ReadBook(new BookFolder(Path.of("")), opened, Farm.of(recorded.entries()), null, day);
        this.leaves = recorded.leaves();
        this.key = key;
        this.found = judged() ? Judging.of(book, day) : new Findings(List.of());
    }

    /** Whether this version has the rule book that the farm works by. */
    private boolean judged() {
        return RuleBook.of(book.opened().rules()).isPresent();
    }

    /** How many findings there are of each outcome, and what is not met; empty where nothing could be judged. */
    Optional<InspectView.Counts> counts() {
        return judged()
                ? Optional.of(new InspectView.Counts(
                        day.toString(),
                        found.with(Outcome.NOT_MET).size(),
                        found.with(Outcome.INCOMPLETE).size(),
                        found.with(Outcome.ASK).size(),
                        found.with(Outcome.MET).size(),
                        found.with(Outcome.NOT_MET).stream()
                                .map(finding -> finding.subject() + " [" + finding.rule() + "]")
                                .toList()))
                : Optional.empty();
    }

    /** What {@code findings.json} says. */
    record FindingsFile(
            String program,
            boolean practice,
            String farm,
            String rules,
            boolean judged,
            String on,
            int entries,
            List<Check.FindingView> findings) {}

    LocalDate day() {
        return day;
    }

    /** All but the report, by name, in the order of the packet. */
    Map<String, Content> tables() {
        Map<String, Content> pages = new LinkedHashMap<>();
        pages.put(MemberNames.FINDINGS, text(out -> out.write(Output.json(findings()) + "\n")));
        pages.put(MemberNames.BEDS, csv(() -> Beds.table(book, day)));
        pages.put(MemberNames.RETURNED, csv(() -> ReturnedCommand.table(book, day)));
        pages.put(MemberNames.LOTS, csv(() -> LotTable.of(book, day)));
        return pages;
    }

    /** The report, which also says whether the lines agreed with the checkpoint. */
    Report report(SignedNote note, Verdict verdict) {
        SealedReport report = new SealedReport(book, day, made, leaves, key, note, verdict);
        return new Report(new Sized(text(report::write)), report::writePaper);
    }

    /** The report as a page and, made last, as a tagged PDF. */
    record Report(Sized page, Content paper) {
        /** Whether it is short enough for paper; known once the page was written. */
        boolean isOnPaper() {
            return page.size() <= MOST_ON_PAPER;
        }
    }

    private FindingsFile findings() {
        return new FindingsFile(
                "bedledger " + Bedledger.VERSION,
                book.opened().practice(),
                book.opened().farm(),
                book.opened().rules(),
                judged(),
                day.toString(),
                book.farm().written().size(),
                found.all().stream().map(Check::view).toList());
    }

    /** The page that says how to check by hand; the same in every packet. */
    static byte[] handCheck() {
        try (InputStream in = Pages.class.getResourceAsStream(HAND_CHECK)) {
            if (in == null) {
                throw new IllegalStateException("no resource " + HAND_CHECK);
            }
            return in.readAllBytes();
        } catch (IOException failed) {
            throw new UncheckedIOException(HAND_CHECK, failed);
        }
    }

    private static Content csv(java.util.function.Supplier<Output.Table> table) {
        return text(out -> out.write(Output.csv(table.get())));
    }

    @FunctionalInterface
    private interface Text {
        void write(Writer out) throws IOException;
    }

    private static Content text(Text text) {
        return out -> {
            Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
            text.write(writer);
            writer.flush();
        };
    }
}

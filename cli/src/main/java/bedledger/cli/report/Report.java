package bedledger.cli.report;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.paper.Paper;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReadOptions;
import bedledger.projections.findings.Outcome;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bedledger report}: the audit report as one HTML file, and the same as a tagged PDF. */
@Command(
        name = "bedledger report",
        sortOptions = false,
        description =
                "Write the audit report: one HTML file that opens in any browser, and beside it the same"
                        + " as a tagged PDF for print and keeping; print their paths. For the agronomist: the seasons of the beds as a folder with HTML, PDF and the figures as CSV.",
        footer = {
            "",
            "Example: bedledger report --on 2025-12-31",
            "Example: bedledger report --for agronomist --on 2025-12-31"
        })
public final class Report implements Callable<Integer> {
    private final Surroundings around;

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--for", paramLabel = "READER", description = "inspector (if left out) or agronomist")
    String reader = "inspector";

    @Option(names = "--on", paramLabel = "DAY", description = "the record up to that day (today if left out)")
    @Nullable
    String on;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "where to write it (reports/audit-DAY.html in the book if left out, for the agronomist"
                    + " the folder reports/seasons-DAY); what is there is left alone, and the new one gets a number")
    @Nullable
    Path out;

    @Option(names = "--html-only", description = "write no PDF; making it takes some seconds more")
    boolean htmlOnly;

    @Option(
            names = "--late-from",
            paramLabel = "DAYS",
            description = "set the days from work to writing in bold from so many on (7 if left out)")
    int lateFrom = Audit.LATE_FROM;

    public Report(Surroundings around) {
        this.around = around;
    }

    /** What {@code --json} prints: where the report is, and what it counts. */
    record View(
            boolean practice,
            String farm,
            String on,
            @Nullable String asKnownOn,
            String file,
            @Nullable String paper,
            long entries,
            long notMet,
            long incomplete,
            long ask,
            long met) {}

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        LocalDate day = book.dayOr("--on", on);
        if (reader.equals("agronomist")) {
            return new SeasonsFolder(around, options, book, day, out).call();
        }
        if (!reader.equals("inspector")) {
            throw new Failure(Exit.USAGE, "--for '" + reader + "' is none of inspector, agronomist.");
        }
        if (lateFrom < 1) {
            throw new Failure(Exit.USAGE, "--late-from " + lateFrom + " is no number of days. Give 1 or more.");
        }
        Asked asked = Asked.of(book, day);
        Audit audit = Audit.of(
                asked,
                Seal.of(book.folder()),
                LeafHashes.read(book.folder().journal(), book.zone()),
                around.clock().instant(),
                lateFrom);
        ReportFile.Written written = ReportFile.write(
                wanted(book, day),
                audit::write,
                htmlOnly ? null : paper -> audit.writePaper(Paper.Kept.PDF_A_3A, paper));
        View view = view(asked, written);
        return new Output(around, options).print(view, table(view), text -> {
            if (view.paper() != null) {
                text.out().println(view.paper());
            }
            text.out().println(view.file());
        });
    }

    private Path wanted(ReadBook book, LocalDate day) {
        if (out != null && out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw new Failure(
                    Exit.USAGE,
                    "--out '" + out + "' is the name of a PDF. Give the page's name, such as audit.html; the PDF is put"
                            + " beside it.");
        }
        return out == null
                ? book.folder().root().resolve("reports").resolve("audit-" + day + ".html")
                : around.folder().resolve(out);
    }

    private static View view(Asked asked, ReportFile.Written written) {
        return new View(
                asked.book().opened().practice(),
                asked.book().opened().farm(),
                asked.day().toString(),
                asked.book().asKnownOn() == null
                        ? null
                        : asked.book().asKnownOn().toString(),
                written.page().toString(),
                written.paper() == null ? null : written.paper().toString(),
                asked.farm().written().size(),
                asked.findings().with(Outcome.NOT_MET).size(),
                asked.findings().with(Outcome.INCOMPLETE).size(),
                asked.findings().with(Outcome.ASK).size(),
                asked.findings().with(Outcome.MET).size());
    }

    private static Output.Table table(View view) {
        return new Output.Table(
                List.of("file", "paper", "on", "entries", "not_met", "incomplete", "ask", "met"),
                List.of(List.of(
                        view.file(),
                        view.paper() == null ? "" : view.paper(),
                        view.on(),
                        Long.toString(view.entries()),
                        Long.toString(view.notMet()),
                        Long.toString(view.incomplete()),
                        Long.toString(view.ask()),
                        Long.toString(view.met()))));
    }
}

package bedledger.cli.report;

import bedledger.cli.chart.Drawing;
import bedledger.cli.paper.Paper;
import bedledger.projections.returned.Measure;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.Writer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The agronomist's report: its chapters in the order she reads, on the screen and on paper, and their figures as data. */
record SeasonsReport(SeasonsTitle title, List<Chapter> chapters, CoefficientsPart coefficients) {
    static SeasonsReport of(SeasonsAsked asked, Seal seal, Instant made) {
        List<Chapter> chapters = asked.isEmpty() ? List.of() : chapters(asked);
        List<CoefficientLine> used = chapters.stream()
                .flatMap(chapter -> chapter.coefficients().stream())
                .distinct()
                .toList();
        List<String> tables = used.stream()
                .map(CoefficientLine::citation)
                .map(citation -> (citation.table() + " " + citation.edition()).strip())
                .distinct()
                .sorted()
                .toList();
        return new SeasonsReport(
                new SeasonsTitle(asked, seal, made, tables), chapters, new CoefficientsPart(asked.tables(), used));
    }

    /** A further chapter is one more line here. */
    private static List<Chapter> chapters(SeasonsAsked asked) {
        return List.of(
                new ReturnedChapter(asked, Measure.DRY).chapter(),
                new ReturnedChapter(asked, Measure.CARBON).chapter(),
                new ReturnedChapter(asked, Measure.NITROGEN).chapter(),
                new RunningTotalChapter(asked).chapter(),
                new EvidenceChapter(asked).chapter(),
                new SoilWorkChapter(asked).chapter(),
                new CoverChapter(asked).chapter(),
                new RotationChapter(asked).chapter(),
                new ReleaseChapter(asked).chapter(),
                new BreakdownChapter(asked).chapter(),
                new SoilTestsChapter(asked).chapter(),
                new SoilCarbonChapter(asked).chapter());
    }

    boolean isEmpty() {
        return chapters.isEmpty();
    }

    String rule() {
        return bedledger.projections.estimate.Estimate.RULE;
    }

    List<Drawing> drawings() {
        return chapters.stream().flatMap(chapter -> chapter.drawings().stream()).toList();
    }

    List<Chapter.DataFile> files() {
        List<Chapter.DataFile> files = new ArrayList<>();
        chapters.forEach(chapter -> files.addAll(chapter.files()));
        files.add(new Chapter.DataFile("coefficients.csv", coefficients.data()));
        return files;
    }

    void write(Writer out) throws IOException {
        Templates.ALL.compile("seasons.mustache").execute(out, this).flush();
    }

    void writePaper(Paper.Kept kept, OutputStream out) throws IOException {
        StringWriter page = new StringWriter();
        write(page);
        StringWriter css = new StringWriter();
        Templates.ALL.compile("paper.mustache").execute(css, this).flush();
        new Paper(page.toString(), css.toString(), drawings()).write(kept, title.version(), title.made(), out);
    }
}

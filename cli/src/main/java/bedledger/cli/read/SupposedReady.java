package bedledger.cli.read;

import bedledger.language.BedId;
import bedledger.projections.breakdown.BedBreakdown;
import bedledger.projections.breakdown.Breakdown;
import bedledger.projections.breakdown.Use;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Supposing;
import java.io.PrintStream;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What is left and when beds are ready, as recorded beside what it would be under a supposition.
 *
 * @param words what is supposed
 */
record SupposedReady(ReadBook book, String words, Supposing supposing, Breakdown recorded, Breakdown supposed) {
    private static final int PERCENT = 100;

    /** What {@code --json} prints; nothing of it is written. */
    record View(String supposed, List<ReadyView.BedView> beds, List<String> nothingOn, List<String> notWaiting) {}

    private List<BedId> beds() {
        return supposing.hauls().stream()
                .map(haul -> haul.cropping().bed())
                .distinct()
                .toList();
    }

    View view() {
        return new View(
                words,
                beds().stream()
                        .flatMap(bed -> supposed.bed(bed).stream())
                        .map(ReadyView::bed)
                        .toList(),
                supposing.nothingOn().stream().map(BedId::name).toList(),
                notWaiting());
    }

    private List<String> notWaiting() {
        return beds().stream()
                .filter(bed -> recorded.bed(bed).isEmpty())
                .map(BedId::name)
                .toList();
    }

    void print(PrintStream out, LocalDate day, Use use) {
        book.banner().forEach(out::println);
        paragraph(
                out,
                "If " + words + " (supposed, not written): what is left on " + day + ", and when ready for "
                        + use.words() + ":");
        paragraph(
                out,
                "Of " + supposing.hauls().stream().map(SupposedReady::words).collect(Collectors.joining("; ")) + ".");
        TextTable table = new TextTable("bed", "", "as recorded", "if hauled off");
        for (BedId bed : beds()) {
            recorded.bed(bed).ifPresent(one -> supposed.bed(bed).ifPresent(two -> rows(table, use, one, two)));
        }
        table.lines().forEach(out::println);
        notWaiting().forEach(bed -> paragraph(out, bed + " does not lie under a tarp or empty after a crop."));
        supposing.nothingOn().forEach(bed -> paragraph(out, "Nothing had ended on " + bed + " by then."));
        beds().forEach(bed -> {
            recorded.bed(bed).ifPresent(one -> gaps(out, one, "as recorded"));
            supposed.bed(bed).ifPresent(two -> gaps(out, two, "if hauled off"));
        });
        paragraph(out, ReadyView.DECIDES);
        out.println();
        paragraph(out, "What was done to the bed later is left as recorded. " + Estimate.RULE);
    }

    /** Such as "K1 broccoli to 2025-07-01". */
    static String words(Supposing.HauledOff haul) {
        return haul.cropping().bed() + " " + haul.cropping().crop()
                + haul.cropping().ended().map(day -> " to " + day).orElse("");
    }

    private void rows(TextTable table, Use use, BedBreakdown one, BedBreakdown two) {
        row(
                table,
                one,
                two,
                book.massUnit().name() + " dry left",
                bed -> bed.left().map(left -> Figure.band(left, book.massUnit().kilograms())));
        row(
                table,
                one,
                two,
                "covers",
                bed -> bed.cover()
                        .map(cover -> percent(cover.best()) + " (" + percent(cover.low()) + "–" + percent(cover.high())
                                + ")"));
        row(
                table,
                one,
                two,
                "earliest",
                bed -> bed.ready(use).map(date -> date.earliest().toString()));
        row(table, one, two, "likely", bed -> bed.ready(use).map(ReadyCommand::likely));
        row(table, one, two, "latest", bed -> bed.ready(use).map(ReadyCommand::latest));
    }

    private static void row(
            TextTable table,
            BedBreakdown one,
            BedBreakdown two,
            String what,
            Function<BedBreakdown, Optional<String>> figure) {
        table.row(
                one.bed(),
                what,
                figure.apply(one).orElse("incomplete"),
                figure.apply(two).orElse("incomplete"));
    }

    private static void gaps(PrintStream out, BedBreakdown bed, String how) {
        bed.missing().forEach(gap -> paragraph(out, bed.bed() + " incomplete, " + how + ": " + gap));
    }

    private static String percent(double share) {
        return Math.round(PERCENT * share) + " %";
    }

    private static void paragraph(PrintStream out, String text) {
        TextTable.wrapped(text, 80).forEach(out::println);
    }
}

package bedledger.cli.read;

import bedledger.cli.read.ReturnedView.FigureView;
import bedledger.projections.breakdown.BedBreakdown;
import bedledger.projections.breakdown.Breakdown;
import bedledger.projections.breakdown.FarmRate;
import bedledger.projections.breakdown.Parameter;
import bedledger.projections.breakdown.Practice;
import bedledger.projections.breakdown.ReadyDate;
import bedledger.projections.breakdown.Use;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.weather.Coverage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What {@code ready --json} prints; masses in kg dry.
 *
 * @param decides whose word is the last
 * @param trial what the one trial that measured it found
 * @param rule how low and high are combined
 */
record ReadyView(
        boolean practice,
        String farm,
        String on,
        @Nullable String asKnownOn,
        String use,
        String decides,
        String trial,
        String rule,
        String dateRule,
        String method,
        List<RateView> rates,
        List<BedView> beds,
        SupposedReady.@Nullable View supposed) {
    static final String DECIDES = "These are estimates. Your own look at the bed decides.";

    /** One bed. */
    record BedView(
            String bed,
            List<String> after,
            @Nullable String since,
            @Nullable String tarpedSince,
            String lies,
            List<String> wentIn,
            @Nullable FigureView leftKilograms,
            @Nullable FigureView shareLeft,
            @Nullable FigureView onTopKilograms,
            @Nullable FigureView cover,
            List<DateView> dates,
            @Nullable PracticeView commonPractice,
            @Nullable String weather,
            List<String> missing,
            List<String> remarks,
            List<String> parameters,
            List<Long> entries) {}

    /** When a bed is ready for a use; a day that is not reached within the days looked ahead is left out. */
    record DateView(
            String use,
            double coverAtMost,
            String earliest,
            @Nullable String likely,
            @Nullable String latest,
            boolean heldByWait,
            List<String> doubts,
            String weather) {}

    /** How long a tarp lies by common practice. */
    record PracticeView(@Nullable String from, @Nullable String to, String words, String status, String source) {}

    /** A rate that the farm's own looks corrected. */
    record RateView(String group, int leafLooks, int stalkLooks, List<String> words, List<String> looks) {}

    static ReadyView of(
            ReadBook book,
            LocalDate on,
            Use use,
            Breakdown breakdown,
            List<BedBreakdown> beds,
            SupposedReady.@Nullable View supposed) {
        return new ReadyView(
                book.opened().practice(),
                book.opened().farm(),
                on.toString(),
                Beds.text(book.asKnownOn()),
                use.words(),
                DECIDES,
                Practice.TRIAL,
                Estimate.RULE,
                ReadyDate.METHOD,
                FarmRate.METHOD,
                breakdown.rates().stream()
                        .map(rate -> new RateView(
                                rate.group().name(), rate.leaves(), rate.stalks(), rate.words(), rate.looks()))
                        .toList(),
                beds.stream().map(ReadyView::bed).toList(),
                supposed);
    }

    static BedView bed(BedBreakdown bed) {
        return new BedView(
                bed.bed().name(),
                bed.after(),
                bed.since().map(LocalDate::toString).orElse(null),
                bed.tarpedSince().map(LocalDate::toString).orElse(null),
                bed.lies(),
                bed.wentIn(),
                bed.left().map(FigureView::of).orElse(null),
                bed.share().map(FigureView::of).orElse(null),
                bed.onTop().map(FigureView::of).orElse(null),
                bed.cover().map(FigureView::of).orElse(null),
                bed.ready().stream().map(ReadyView::date).toList(),
                bed.practice().map(ReadyView::practice).orElse(null),
                bed.coverage().map(Coverage::words).orElse(null),
                bed.missing(),
                bed.remarks(),
                bed.parameters().stream().map(Parameter::inWords).toList(),
                List.copyOf(bed.entries()));
    }

    private static DateView date(ReadyDate date) {
        return new DateView(
                date.use().words(),
                date.cover(),
                date.earliest().toString(),
                date.likely().map(LocalDate::toString).orElse(null),
                date.latest().map(LocalDate::toString).orElse(null),
                date.held(),
                date.doubts(),
                date.coverage().words());
    }

    private static PracticeView practice(Practice practice) {
        return new PracticeView(
                practice.from().map(LocalDate::toString).orElse(null),
                practice.to().map(LocalDate::toString).orElse(null),
                practice.words(),
                practice.citation().status().words(),
                practice.citation().source());
    }

    Output.Table table() {
        List<List<String>> rows = new ArrayList<>();
        for (BedView bed : beds) {
            for (Use use : Use.values()) {
                DateView date = bed.dates().stream()
                        .filter(each -> each.use().equals(use.words()))
                        .findFirst()
                        .orElse(null);
                rows.add(List.of(
                        bed.bed(),
                        String.join("; ", bed.after()),
                        text(bed.since()),
                        text(bed.tarpedSince()),
                        number(bed.leftKilograms(), -1),
                        number(bed.leftKilograms(), 0),
                        number(bed.leftKilograms(), 1),
                        use.words(),
                        date == null ? "" : date.earliest(),
                        date == null ? "" : text(date.likely()),
                        date == null ? "" : text(date.latest()),
                        String.join("; ", bed.missing())));
            }
        }
        return new Output.Table(
                List.of(
                        "bed",
                        "after",
                        "since",
                        "tarped_since",
                        "left_low_kg",
                        "left_kg",
                        "left_high_kg",
                        "use",
                        "earliest",
                        "likely",
                        "latest",
                        "missing"),
                rows);
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static String number(@Nullable FigureView figure, int end) {
        return figure == null ? "" : Figure.short3(end < 0 ? figure.low() : end > 0 ? figure.high() : figure.best());
    }
}

package bedledger.cli.report;

import bedledger.cli.read.Output;
import bedledger.projections.breakdown.BedBreakdown;
import bedledger.projections.breakdown.Breakdown;
import bedledger.projections.breakdown.FarmRate;
import bedledger.projections.breakdown.Practice;
import bedledger.projections.breakdown.ReadyDate;
import bedledger.projections.breakdown.Use;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.weather.Coverage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tables behind the charts of breakdown, and the same as data. */
final class BreakdownTables {
    private static final int PERCENT = 100;

    private final SeasonsAsked asked;
    private final Breakdown breakdown;
    private final List<BedBreakdown> waiting;

    BreakdownTables(SeasonsAsked asked, Breakdown breakdown, List<BedBreakdown> waiting) {
        this.asked = asked;
        this.breakdown = breakdown;
        this.waiting = waiting;
    }

    Table left() {
        return Table.of(
                        "table-breakdown",
                        "What is left on the beds that wait, " + asked.day() + ", dry mass: best (low to high)",
                        "No bed waits.",
                        List.of(
                                "bed",
                                "after",
                                "tarp since",
                                "went in",
                                "left",
                                "of what went in",
                                "covers of the bed",
                                "entries"),
                        waiting.stream().map(this::left).toList())
                .numbersIn(4, 7);
    }

    private Row left(BedBreakdown bed) {
        return Row.of(
                Cell.of(bed.bed().name()).asHeader(),
                Cell.of(String.join(", ", bed.after())
                        + bed.since().map(day -> ", ended " + day).orElse("")),
                Cell.whole(bed.tarpedSince().map(LocalDate::toString).orElse("no tarp")),
                Cell.of(String.join("; ", bed.wentIn())),
                Cell.number(bed.left().map(asked.book().massUnit()::words).orElse("incomplete")),
                Cell.number(percent(bed.share())),
                Cell.number(percent(bed.cover())),
                Cell.of(SeasonsAsked.entries(bed.entries())));
    }

    private static String percent(Optional<Estimate> share) {
        return share.map(each -> Math.round(PERCENT * each.best()) + " % (" + Math.round(PERCENT * each.low()) + " to "
                        + Math.round(PERCENT * each.high()) + ")")
                .orElse("incomplete");
    }

    Table dates() {
        List<String> columns =
                List.of("ready for", "covered at most", "earliest", "likely", "latest", "weather up to the likely day");
        return Table.grouped(
                "table-ready",
                "When the beds that wait are ready, by the model; beside it what common practice says of the tarp",
                "No date can be worked out.",
                columns,
                waiting.stream()
                        .map(bed -> new Table.Group(
                                "Bed " + bed.bed() + ": " + practice(bed) + "; weather since the crop ended: "
                                        + bed.coverage().map(Coverage::words).orElse("not known"),
                                columns.size(),
                                bed.ready().isEmpty()
                                        ? List.of(Row.of(
                                                Cell.of("incomplete").asHeader(),
                                                Cell.of(""),
                                                Cell.of(""),
                                                Cell.of(""),
                                                Cell.of(""),
                                                Cell.of(String.join("; ", bed.missing()))))
                                        : bed.ready().stream()
                                                .map(BreakdownTables::date)
                                                .toList()))
                        .toList());
    }

    private static String practice(BedBreakdown bed) {
        return bed.practice()
                .map(Practice::words)
                .orElse(bed.tarpedSince().isEmpty() ? "no tarp lies on it" : "no common practice on record for it");
    }

    private static Row date(ReadyDate date) {
        return Row.of(
                Cell.of(date.use().words()).asHeader(),
                Cell.number(Math.round(PERCENT * date.cover()) + " %"),
                Cell.whole(date.earliest().toString()),
                Cell.whole(date.likely().map(LocalDate::toString).orElse("beyond 2 years")),
                Cell.whole(date.latest().map(LocalDate::toString).orElse("open")),
                Cell.of(date.coverage().words()
                        + (date.held() ? "; the wait after worked-in green matter decides" : "")));
    }

    Table rates() {
        return Table.of(
                "table-own-rates",
                "Rates that the farm's own looks corrected",
                "No look of the farm corrected a rate.",
                List.of("residue", "looks at leaves", "looks at stalks", "what they make of the rate", "what was seen"),
                breakdown.rates().stream().map(BreakdownTables::rate).toList());
    }

    private static Row rate(FarmRate rate) {
        return Row.of(
                Cell.of(rate.group().name()).asHeader(),
                Cell.number(Integer.toString(rate.leaves())),
                Cell.number(Integer.toString(rate.stalks())),
                Cell.of(String.join("; ", rate.words())),
                Cell.of(String.join("; ", rate.looks())));
    }

    Output.Table data() {
        List<String> header = new ArrayList<>(List.of("bed", "after", "since", "tarped_since"));
        header.addAll(Signed.three("left_kg"));
        header.addAll(Signed.three("share_left"));
        header.addAll(Signed.three("cover"));
        header.addAll(List.of(
                "use",
                "cover_at_most",
                "earliest",
                "likely",
                "latest",
                "practice_from",
                "practice_to",
                "weather",
                "missing",
                "entries"));
        List<List<String>> rows = new ArrayList<>();
        for (BedBreakdown bed : waiting) {
            for (Use use : Use.values()) {
                rows.add(row(bed, use));
            }
        }
        return new Output.Table(header, rows);
    }

    private static List<String> row(BedBreakdown bed, Use use) {
        Optional<ReadyDate> date = bed.ready(use);
        List<String> row = new ArrayList<>(
                List.of(bed.bed().name(), String.join("; ", bed.after()), text(bed.since()), text(bed.tarpedSince())));
        List.of(bed.left(), bed.share(), bed.cover()).forEach(figure -> row.addAll(three(figure)));
        row.addAll(List.of(
                use.words(),
                date.map(each -> Double.toString(each.cover())).orElse(""),
                date.map(each -> each.earliest().toString()).orElse(""),
                text(date.flatMap(ReadyDate::likely)),
                text(date.flatMap(ReadyDate::latest)),
                text(bed.practice().flatMap(Practice::from)),
                text(bed.practice().flatMap(Practice::to)),
                bed.coverage().map(Coverage::words).orElse(""),
                String.join("; ", bed.missing()),
                SeasonsAsked.entries(bed.entries())));
        return row;
    }

    private static List<String> three(Optional<Estimate> figure) {
        return figure.map(each -> List.of(
                        Double.toString(each.low()), Double.toString(each.best()), Double.toString(each.high())))
                .orElse(List.of("", "", ""));
    }

    private static String text(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }

    Output.Table rateData() {
        return new Output.Table(
                List.of("residue", "looks_at_leaves", "looks_at_stalks", "rate", "looks"),
                breakdown.rates().stream()
                        .map(rate -> List.of(
                                rate.group().name(),
                                Integer.toString(rate.leaves()),
                                Integer.toString(rate.stalks()),
                                String.join("; ", rate.words()),
                                String.join("; ", rate.looks())))
                        .toList());
    }
}

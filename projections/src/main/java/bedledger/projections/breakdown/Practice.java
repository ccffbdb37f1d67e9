package bedledger.projections.breakdown;

import bedledger.projections.tables.Citation;
import bedledger.projections.tables.Status;
import bedledger.projections.tables.TableFile;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How long a tarp lies by common practice, beside what the model says.
 *
 * @param after what lay on the bed
 * @param season summer, spring or cold, by the warmth of the soil
 * @param weeksFrom both empty: over winter
 * @param weeksTo empty: or more
 * @param from the day it may come off; empty over winter
 */
public record Practice(
        String after,
        String season,
        OptionalInt weeksFrom,
        OptionalInt weeksTo,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        Citation citation,
        String note) {
    /** What the one trial that measured it found; it stands beside every date. */
    public static final String TRIAL =
            "The one trial found that measured residue under tarps saw no decrease (Rylander, thesis, Cornell University).";

    private record Row(String after, String season, OptionalInt from, OptionalInt to, Citation citation, String note) {}

    private static final List<Row> ROWS = new TableFile("tarp-durations", Tables.EDITION)
            .rows(row -> new Row(
                    row.text("after"),
                    row.text("season"),
                    weeks(row.text("weeks_from")),
                    weeks(row.text("weeks_to")),
                    row.citation(),
                    row.text("note")));

    private static OptionalInt weeks(String text) {
        return text.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text));
    }

    static Optional<Practice> of(String after, double soil, LocalDate laid) {
        String season = soil > Constants.get("summer from").value()
                ? "summer"
                : soil >= Constants.get("spring from").value() ? "spring" : "cold";
        return ROWS.stream()
                .filter(row -> row.after().equals(after) && row.season().equals(season))
                .findFirst()
                .map(row -> new Practice(
                        after,
                        season,
                        row.from(),
                        row.to(),
                        day(laid, row.from()),
                        day(laid, row.to()),
                        row.citation(),
                        row.note()));
    }

    private static Optional<LocalDate> day(LocalDate laid, OptionalInt weeks) {
        return weeks.isEmpty() ? Optional.empty() : Optional.of(laid.plusWeeks(weeks.getAsInt()));
    }

    /** Such as "5 to 8 weeks after brassica stalks in warm soil (2025-08-12 to 2025-09-02); common practice, no source". */
    public String words() {
        String how = weeksFrom.isEmpty()
                ? "over winter"
                : weeksTo.isEmpty()
                        ? weeksFrom.getAsInt() + " weeks or more"
                        : weeksFrom.getAsInt() + " to " + weeksTo.getAsInt() + " weeks";
        String soil = season.equals("summer") ? "warm" : season.equals("spring") ? "mild" : "cold";
        String dates = from.map(day -> " (" + day + (to.isEmpty() ? " or later" : " to " + to.get()) + ")")
                .orElse("");
        String said = citation.status() == Status.CONFIRMED
                ? citation.source() + " for killing plants or weeds"
                : "common practice, no source";
        return String.format(Locale.ROOT, "%s under the tarp after %s in %s soil%s; %s", how, after, soil, dates, said)
                + (note.isEmpty() ? "" : "; " + note);
    }
}

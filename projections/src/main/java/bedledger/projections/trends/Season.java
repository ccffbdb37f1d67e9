package bedledger.projections.trends;

import bedledger.projections.returned.Options;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * One season.
 *
 * @param name as totals by season name it
 * @param from its first day
 * @param to its last day, or the day asked where that comes first
 */
public record Season(String name, LocalDate from, LocalDate to) implements Comparable<Season> {
    public Season {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("a season ends after it begins, not " + from + " to " + to);
        }
    }

    /** Every season from that of one day to that of another, oldest first, without a gap. */
    static List<Season> between(LocalDate first, LocalDate last, Options options) {
        List<Season> seasons = new ArrayList<>();
        for (LocalDate from = beginning(first, options.seasonBegins()); !from.isAfter(last); from = next(from)) {
            LocalDate end = next(from).minusDays(1);
            seasons.add(new Season(options.season(from), from, end.isAfter(last) ? last : end));
        }
        return List.copyOf(seasons);
    }

    private static LocalDate beginning(LocalDate day, MonthDay begins) {
        LocalDate thisYear = begins.atYear(day.getYear());
        return thisYear.isAfter(day) ? begins.atYear(day.getYear() - 1) : thisYear;
    }

    private static LocalDate next(LocalDate from) {
        return from.plusYears(1);
    }

    public boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }

    public long days() {
        return ChronoUnit.DAYS.between(from, to) + 1;
    }

    @Override
    public int compareTo(Season other) {
        return from.compareTo(other.from);
    }
}

package bedledger.projections.returned;

import bedledger.projections.estimate.MassUnit;
import java.time.LocalDate;
import java.time.MonthDay;

/**
 * What the totals count, and how sentences speak.
 *
 * @param countTypical whether guesses from a typical yield are counted
 * @param seasonBegins the day on which a season begins; a season is named after the year it begins in
 * @param unit the unit of masses in sentences
 */
public record Options(boolean countTypical, MonthDay seasonBegins, MassUnit unit) {
    /** No guesses; the season is the calendar year. */
    public static final Options DEFAULT = new Options(false, MonthDay.of(1, 1), MassUnit.KILOGRAM);

    public Options countingTypical() {
        return new Options(true, seasonBegins, unit);
    }

    public Options speaking(MassUnit other) {
        return new Options(countTypical, seasonBegins, other);
    }

    /** The season of a day, by the year it begins in. */
    public String season(LocalDate day) {
        boolean before = MonthDay.from(day).isBefore(seasonBegins);
        int year = before ? day.getYear() - 1 : day.getYear();
        return seasonBegins.equals(MonthDay.of(1, 1)) ? "" + year : year + "/" + (year + 1);
    }
}

package bedledger.projections.returned;

import java.time.LocalDate;
import java.time.MonthDay;

/**
 * What the totals count.
 *
 * @param countTypical whether guesses from a typical yield are counted
 * @param seasonBegins the day on which a season begins; a season is named after the year it begins in
 */
public record Options(boolean countTypical, MonthDay seasonBegins) {
    /** No guesses; the season is the calendar year. */
    public static final Options DEFAULT = new Options(false, MonthDay.of(1, 1));

    public Options countingTypical() {
        return new Options(true, seasonBegins);
    }

    /** The name of the season a day falls in. */
    public String season(LocalDate day) {
        boolean before = MonthDay.from(day).isBefore(seasonBegins);
        int year = before ? day.getYear() - 1 : day.getYear();
        return seasonBegins.equals(MonthDay.of(1, 1)) ? "" + year : year + "/" + (year + 1);
    }
}

package bedledger.cli.read;

import bedledger.language.BadValue;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Reads days as people say them in the evening: today, yesterday, mon, 14, 2025-07-14. */
public final class DayWords {
    /** A bare number further back than this in another month is more likely a slip than last month's day. */
    private static final int LATELY = 14;

    private final LocalDate today;

    public DayWords(LocalDate today) {
        this.today = today;
    }

    public LocalDate today() {
        return today;
    }

    /** The day meant; {@link BadValue} says how to write one. */
    public LocalDate day(String text) {
        String word = text.strip().toLowerCase(Locale.ROOT);
        if (word.equals("today")) {
            return today;
        }
        if (word.equals("yesterday")) {
            return today.minusDays(1);
        }
        Optional<DayOfWeek> weekday = weekday(word);
        if (weekday.isPresent()) {
            return today.with(TemporalAdjusters.previousOrSame(weekday.get()));
        }
        if (word.matches("[0-9]{1,2}")) {
            return dayOfMonth(text, Integer.parseInt(word));
        }
        try {
            return LocalDate.parse(word);
        } catch (DateTimeException notADay) {
            throw new BadValue(
                    text,
                    "it is not a day",
                    "write 2025-07-14, today, yesterday, a weekday (mon), or the day of the month");
        }
    }

    private static Optional<DayOfWeek> weekday(String word) {
        return word.length() < 3
                ? Optional.empty()
                : Arrays.stream(DayOfWeek.values())
                        .filter(day -> day.name().toLowerCase(Locale.ROOT).startsWith(word))
                        .findFirst();
    }

    /** The last such day of a month that is not to come. */
    private LocalDate dayOfMonth(String text, int day) {
        for (int back = 0; back < 3; back++) {
            LocalDate month = today.minusMonths(back).withDayOfMonth(1);
            if (day >= 1
                    && day <= month.lengthOfMonth()
                    && !month.withDayOfMonth(day).isAfter(today)) {
                return recent(text, month.withDayOfMonth(day));
            }
        }
        throw new BadValue(text, "no month lately had such a day", "write it like 2025-07-14");
    }

    public static LocalTime time(String text) {
        try {
            String padded = text.strip().matches("[0-9]:[0-9]{2}") ? "0" + text.strip() : text.strip();
            return LocalTime.parse(padded);
        } catch (DateTimeException notATime) {
            throw new BadValue(text, "it is not a time of day", "write it like 7:30 or 19:05");
        }
    }

    private LocalDate recent(String text, LocalDate day) {
        if (day.getMonth() != today.getMonth() && day.isBefore(today.minusDays(LATELY))) {
            throw new BadValue(
                    text,
                    "this month's is to come, and last month's is long ago",
                    "write the day in full, as in " + day);
        }
        return day;
    }
}

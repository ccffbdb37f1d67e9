package bedledger.ledger.entry;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/** Days and moments as they are stored. */
final class Moments {
    private static final DateTimeFormatter MILLISECONDS =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);
    private static final Kept<LocalDate> DAYS = new Kept<>(LocalDate::parse);
    private static final String SHAPE = "0000-00-00T00:00:00.000Z";
    private static final long SECONDS_IN_A_DAY = 86_400;
    private static final long NANOSECONDS_IN_A_MILLISECOND = 1_000_000;

    static LocalDate day(String text) {
        return DAYS.of(text);
    }

    /** To the millisecond. */
    static String written(Instant at) {
        return MILLISECONDS.format(at);
    }

    /** Reads a moment; the shape in which it is written needs no formatter, every other one is left to {@link Instant#parse}. */
    static Instant moment(String text) {
        if (!hasTheShape(text)) {
            return Instant.parse(text);
        }
        int hour = number(text, 11, 2);
        int minute = number(text, 14, 2);
        int second = number(text, 17, 2);
        if (hour > 23 || minute > 59 || second > 59) {
            return Instant.parse(text);
        }
        long days = day(text.substring(0, 10)).toEpochDay();
        return Instant.ofEpochSecond(
                days * SECONDS_IN_A_DAY + (hour * 60L + minute) * 60 + second,
                number(text, 20, 3) * NANOSECONDS_IN_A_MILLISECOND);
    }

    private static boolean hasTheShape(String text) {
        if (text.length() != SHAPE.length()) {
            return false;
        }
        for (int at = 0; at < SHAPE.length(); at++) {
            char is = text.charAt(at);
            if (SHAPE.charAt(at) == '0' ? is < '0' || is > '9' : is != SHAPE.charAt(at)) {
                return false;
            }
        }
        return true;
    }

    private static int number(String text, int from, int digits) {
        return Integer.parseInt(text, from, from + digits, 10);
    }

    private Moments() {}
}

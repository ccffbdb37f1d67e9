package bedledger.cli.exchange;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** Writes days as an iCalendar object, RFC 5545: whole-day events, which every calendar shows. */
final class ICalendar {
    /** RFC 5545, 3.1: octets of a line, without its end. */
    private static final int OCTETS = 75;

    private static final DateTimeFormatter DATE = DateTimeFormatter.BASIC_ISO_DATE;
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    /**
     * One whole day.
     *
     * @param uid the same for the same thing each time it is written, so that a calendar takes it for a change and not for another one
     */
    record Event(String uid, LocalDate day, String summary, String description) {}

    /** The calendar's text; {@code written} stamps every event. */
    static String text(String name, Instant written, List<Event> events) {
        StringBuilder text = new StringBuilder();
        line(text, "BEGIN:VCALENDAR");
        line(text, "VERSION:2.0");
        line(text, "PRODID:-//Bedledger//Due//EN");
        line(text, "X-WR-CALNAME:" + escaped(name));
        for (Event event : events) {
            line(text, "BEGIN:VEVENT");
            line(text, "UID:" + event.uid());
            line(text, "DTSTAMP:" + MOMENT.format(written));
            line(text, "DTSTART;VALUE=DATE:" + DATE.format(event.day()));
            line(text, "SUMMARY:" + escaped(event.summary()));
            line(text, "DESCRIPTION:" + escaped(event.description()));
            line(text, "TRANSP:TRANSPARENT");
            line(text, "END:VEVENT");
        }
        line(text, "END:VCALENDAR");
        return text.toString();
    }

    /** RFC 5545, 3.3.11; what may not stand in a text at all (controls) becomes a space. */
    static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replaceAll("\\r\\n|\\r|\\n", "\\\\n")
                .replaceAll("[\\p{Cntrl}&&[^\\t]]", " ");
    }

    /** RFC 5545, 3.1: folded by octets, and never within a character. */
    private static void line(StringBuilder text, String content) {
        int octets = 0;
        for (int at = 0; at < content.length(); ) {
            int character = content.codePointAt(at);
            String one = Character.toString(character);
            int size = one.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > OCTETS) {
                text.append("\r\n ");
                octets = 1;
            }
            text.append(one);
            octets += size;
            at += Character.charCount(character);
        }
        text.append("\r\n");
    }

    private ICalendar() {}
}

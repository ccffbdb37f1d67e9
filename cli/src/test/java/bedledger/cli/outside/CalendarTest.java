package bedledger.cli.outside;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Against RFC 5545, by its text and by a parser written by others (biweekly). */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CalendarTest {
    private Handed handed = new Handed(Path.of("."));
    private String text = "";

    @BeforeAll
    void handOut(@TempDir Path folder) {
        handed = Handed.season(folder);
        text = handed.export("icalendar", "--on", "2025-12-01");
    }

    /** RFC 5545, 3.1: lines end with CRLF and are no longer than 75 octets. */
    @Test
    void linesAreFoldedByOctets() {
        assertThat(text).endsWith("END:VCALENDAR\r\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
        assertThat(text.split("\r\n"))
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75));
        assertThat(text).contains("\r\n ");
    }

    @Test
    void anotherParserReadsBackWhatIsDueAndHasNothingToObject() throws Exception {
        List<List<String>> warnings = new ArrayList<>();
        ICalendar calendar = readBack(warnings);
        assertThat(warnings).allSatisfy(some -> assertThat(some).isEmpty());
        assertThat(calendar.validate(ICalVersion.V2_0).isEmpty()).isTrue();
        JsonNode due = new JsonMapper()
                .readTree(handed.run("", "due", "--on", "2025-12-01", "--days", "366", "--json", "--book", "farm"));
        List<String> said = StreamSupport.stream(due.get("items").spliterator(), false)
                .filter(item -> item.has("day"))
                .map(item -> item.get("day").asText() + " PRACTICE: "
                        + item.get("says").asText())
                .toList();
        assertThat(said).anySatisfy(one -> assertThat(one).contains("é \\", ","));
        assertThat(calendar.getEvents())
                .extracting(event -> day(event) + " " + event.getSummary().getValue())
                .isEqualTo(said);
    }

    private ICalendar readBack(List<List<String>> warnings) {
        List<List<biweekly.io.ParseWarning>> found = new ArrayList<>();
        ICalendar calendar = Biweekly.parse(text).warnings(found).first();
        found.forEach(some -> warnings.add(some.stream().map(Object::toString).toList()));
        return calendar;
    }

    private static String day(VEvent event) {
        biweekly.util.ICalDate day = event.getDateStart().getValue();
        assertThat(day.hasTime()).isFalse();
        biweekly.util.DateTimeComponents raw = day.getRawComponents();
        return String.format(java.util.Locale.ROOT, "%04d-%02d-%02d", raw.getYear(), raw.getMonth(), raw.getDate());
    }

    /** RFC 5545, 3.8.4.7: the identifier is persistent and unique. */
    @Test
    void theSameThingKeepsItsIdentifier() {
        List<String> uids = readBack(new ArrayList<>()).getEvents().stream()
                .map(event -> event.getUid().getValue())
                .toList();
        assertThat(uids).doesNotHaveDuplicates();
        String later = handed.export("icalendar", "--on", "2025-12-02");
        assertThat(Biweekly.parse(later).first().getEvents())
                .extracting(event -> event.getUid().getValue())
                .containsAll(uids);
    }

    @Test
    void dueWritesTheSameCalendarToANewFileAndOverNothing() throws Exception {
        for (String name : List.of("due.ics", "due-2.ics")) {
            handed.run("", "due", "--on", "2025-12-01", "--days", "366", "--ics", "due.ics", "--book", "farm");
            assertThat(Files.readString(handed.folder().resolve(name))).isEqualTo(text);
        }
    }
}

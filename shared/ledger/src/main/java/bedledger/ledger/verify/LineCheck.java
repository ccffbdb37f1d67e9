package bedledger.ledger.verify;

import bedledger.ledger.json.CanonicalJson;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What can be said of each line by itself and of its place after the one before. */
final class LineCheck {

    private static final Pattern INSTANT =
            Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}\\.[0-9]{3}Z");
    private static final DateTimeFormatter MILLISECONDS =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);
    private static final String COMPARE = "Compare it with a backup or a packet from that time.";

    private final Findings findings;
    private long position;
    private long lastNumber;
    private long unnumbered;
    private long inPlace;
    private Instant lastWritten = Instant.MIN;

    LineCheck(Findings findings) {
        this.findings = findings;
    }

    /**
     * Checks the next line.
     *
     * @return the number it stands for in comparisons, or 0 where it is out of order
     */
    long check(ByteLines.Line line) {
        position++;
        if (line.tooLong()) {
            add(Fault.LINE_TOO_LONG, line.length() + " bytes", "at most " + line.bytes().length);
            return unnumbered();
        }
        Optional<JsonNode> canonical = CanonicalJson.readCanonical(line.bytes());
        if (canonical.isEmpty()) {
            add(Fault.LINE_NOT_CANONICAL, "bytes that are not canonical JSON", "one entry as RFC 8785 spells it");
            return unnumbered();
        }
        JsonNode entry = canonical.get();
        Optional<Instant> written = instant(entry.path("writtenAt"));
        List<String> lacking = lacking(entry, written.isPresent());
        if (!lacking.isEmpty()) {
            add(Fault.LINE_INCOMPLETE, "no usable " + String.join(", ", lacking), "what every entry has");
        }
        written.ifPresent(this::checkTime);
        return lacking.contains("number")
                ? unnumbered()
                : checkNumber(entry.path("number").longValue());
    }

    private long unnumbered() {
        unnumbered++;
        return lastNumber + unnumbered;
    }

    /** Lines without a readable number may stand for the numbers between; each was reported already. */
    private long checkNumber(long number) {
        long expected = lastNumber + 1 + unnumbered;
        if (number <= lastNumber && number != inPlace + 1) {
            // Which of the lines with this number is the false one, or whether one was moved, cannot be told from here.
            addNumber(Fault.NUMBER_OUT_OF_ORDER, number, expected, number, expected);
            return 0;
        }
        if (number > expected) {
            addNumber(Fault.NUMBER_MISSING, expected, number - 1, number, expected);
        }
        // If the next line goes on from where this one should stand, only this number was wrong.
        inPlace = number <= lastNumber ? number : expected;
        lastNumber = number;
        unnumbered = 0;
        return number;
    }

    private void addNumber(Fault fault, long first, long last, long found, long expected) {
        findings.add(new Disagreement(
                first, last, fault, "journal line " + position, "number " + found, "number " + expected, COMPARE));
    }

    private void checkTime(Instant written) {
        if (written.isBefore(lastWritten)) {
            long entry = lastNumber + unnumbered + 1;
            findings.add(new Disagreement(
                    Math.max(1, entry - 1),
                    entry,
                    Fault.TIME_GOES_BACK,
                    "journal line " + position,
                    "written at " + MILLISECONDS.format(written),
                    "not before the line above it, " + lastWritten,
                    COMPARE));
        }
        lastWritten = written;
    }

    private static List<String> lacking(JsonNode entry, boolean hasTime) {
        List<String> lacking = new ArrayList<>();
        require(lacking, "number", wholeFrom(1, entry.path("number")));
        for (String text : List.of("act", "name", "writtenBy")) {
            JsonNode value = entry.path(text);
            require(lacking, text, value.isTextual() && !value.textValue().isEmpty());
        }
        require(lacking, "revision", wholeFrom(1, entry.path("revision")));
        require(lacking, "sequence", wholeFrom(0, entry.path("sequence")));
        require(lacking, "writtenAt", hasTime);
        require(lacking, "payload", entry.path("payload").isObject());
        return lacking;
    }

    private static void require(List<String> lacking, String name, boolean usable) {
        if (!usable) {
            lacking.add(name);
        }
    }

    private static boolean wholeFrom(long least, JsonNode value) {
        return value.isIntegralNumber() && value.longValue() >= least;
    }

    private static Optional<Instant> instant(JsonNode value) {
        if (!value.isTextual() || !INSTANT.matcher(value.textValue()).matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Instant.parse(value.textValue()));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    private void add(Fault fault, String found, String expected) {
        long entry = lastNumber + unnumbered + 1;
        findings.add(Disagreement.at(entry, fault, "journal line " + position, found, expected, COMPARE));
    }
}

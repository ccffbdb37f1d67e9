package bedledger.language;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One condition of an inspection; written "C1 by 2026-03-01: file the seed searches".
 *
 * @param id what the inspector calls it, unique within the inspection
 * @param due the day by which it is to be answered
 * @param words what is asked for; without semicolons, which part one condition from the next
 */
public record Condition(String id, LocalDate due, String words) implements Value {
    private static final Pattern SHAPE = Pattern.compile("(\\S+) by (\\S+): (.+)", Pattern.DOTALL);
    private static final String WAY_OUT = "write it like \"C1 by 2026-03-01: file the seed searches\"";

    public Condition {
        id = Names.checked(id, "a condition", Names.SHORT);
        words = Text.checked(words);
        if (words.indexOf(';') >= 0) {
            throw new BadValue(words, "a semicolon parts one condition from the next", "use a comma instead");
        }
    }

    public static Condition parse(String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            throw new BadValue(text, "a condition has a name, the day it is due, and what is asked for", WAY_OUT);
        }
        try {
            return new Condition(shape.group(1), LocalDate.parse(shape.group(2)), shape.group(3));
        } catch (DateTimeParseException notADay) {
            throw new BadValue(text, "'" + shape.group(2) + "' is not a day", WAY_OUT);
        }
    }

    @Override
    public String toString() {
        return id + " by " + due + ": " + words;
    }
}

package bedledger.language;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A harvested lot, its name unique within its harvest year; written "2025/CAR-0901". */
public record LotId(int year, String name) implements Place {
    private static final Pattern SHAPE = Pattern.compile("([12][0-9]{3})/(.+)");

    public LotId {
        name = Names.checked(name, "a lot", Names.SHORT);
    }

    public static LotId parse(String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            throw new BadValue(text, "a lot is written with its harvest year", "write it like 2025/CAR-0901");
        }
        return new LotId(Integer.parseInt(shape.group(1)), shape.group(2));
    }

    @Override
    public String toString() {
        return year + "/" + name;
    }
}

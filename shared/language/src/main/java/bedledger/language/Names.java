package bedledger.language;

import java.util.regex.Pattern;

final class Names {
    static final Pattern SHORT = Pattern.compile("[\\p{L}0-9][\\p{L}0-9._-]{0,31}");
    static final Pattern LONG = Pattern.compile("[\\p{L}0-9][^\\p{Cntrl}\"]{0,79}");

    static String checked(String name, String what, Pattern shape) {
        String stripped = name.strip();
        if (!shape.matcher(stripped).matches() || stripped.contains("..")) {
            throw new BadValue(
                    name,
                    "this cannot be the name of " + what,
                    shape == SHORT
                            ? "use up to 32 letters, digits, '-', '_' and '.', beginning with a letter or digit"
                            : "use up to 80 characters, beginning with a letter or digit, without quotes");
        }
        return stripped;
    }

    private Names() {}
}

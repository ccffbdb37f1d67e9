package bedledger.language;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Orders names as people do: N2 before N10. */
public enum NaturalOrder implements Comparator<String> {
    INSTANCE;

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}");

    @Override
    public int compare(String a, String b) {
        int padded = padded(a).compareTo(padded(b));
        return padded == 0 ? a.compareTo(b) : padded;
    }

    private static String padded(String name) {
        return NUMBER.matcher(name).replaceAll(NaturalOrder::pad);
    }

    private static String pad(java.util.regex.MatchResult number) {
        return Matcher.quoteReplacement("0".repeat(9 - number.group().length()) + number.group());
    }
}

package bedledger.cli.write;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Splits a line as a shell would where nothing but spaces and double quotes matters. */
public final class SaidWords {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    public static List<String> of(String line) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            words.add(word.group(1) == null ? word.group(2) : word.group(1));
        }
        return words;
    }

    private SaidWords() {}
}

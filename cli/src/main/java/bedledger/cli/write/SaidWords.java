package bedledger.cli.write;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Splits a line as a shell would where nothing but spaces and double quotes matters. */
public final class SaidWords {
    private static final Pattern WORD = Pattern.compile("(?:\"[^\"]*\"|[^\\s\"])+");

    public static List<String> of(String line) {
        if (line.chars().filter(c -> c == '"').count() % 2 != 0) {
            throw new Failure(Exit.USAGE, "A quote is opened and not closed. Close it, or leave it out.");
        }
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            words.add(word.group().replace("\"", ""));
        }
        return words;
    }

    private SaidWords() {}
}

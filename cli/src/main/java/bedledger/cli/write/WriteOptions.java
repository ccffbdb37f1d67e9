package bedledger.cli.write;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The options of every command that writes.
 *
 * @param writtenBy who writes; by default the variable BEDLEDGER_PERSON, else {@code owner}
 * @param written the moment of writing; only a practice book takes it
 */
public record WriteOptions(
        @Nullable Path book,
        @Nullable String writtenBy,
        @Nullable String written) {
    public static final String HELP = """
            Of every command that writes:
              --book FOLDER      the book (else the one in this folder or above it)
              --written-by WHO   who writes (else BEDLEDGER_PERSON, else owner)
              --written MOMENT   practice books only: the moment of writing
            """;

    /** Whether nothing was typed after the command, or the help was asked for. */
    public static boolean asksForHelp(List<String> arguments) {
        return arguments.isEmpty() || arguments.contains("--help") || arguments.contains("-h");
    }

    /** Takes these options out of what was typed, and leaves the rest. */
    public static WriteOptions takenFrom(List<String> arguments) {
        String book = take(arguments, "--book");
        return new WriteOptions(
                book == null ? null : Path.of(book), take(arguments, "--written-by"), take(arguments, "--written"));
    }

    public static @Nullable String take(List<String> arguments, String option) {
        for (String word : new ArrayList<>(arguments)) {
            if (word.startsWith(option + "=")) {
                arguments.remove(word);
                return word.substring(option.length() + 1);
            }
        }
        int at = arguments.indexOf(option);
        if (at < 0) {
            return null;
        }
        if (at + 1 >= arguments.size()) {
            throw new Failure(Exit.USAGE, "After " + option + " something is missing. See: bedledger did --help");
        }
        arguments.remove(at);
        return arguments.remove(at);
    }
}

package bedledger.cli.write;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.domain.Draft;
import bedledger.domain.Written;
import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Ask;
import bedledger.language.BadValue;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.FactReader;
import bedledger.language.Head;
import bedledger.language.Problem;
import bedledger.language.Refused;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** {@code bedledger correct NUMBER --why …}: replaces an entry in force by a whole new fact; what is not given again stays as it was. */
public final class Correct {
    static final String HELP = """
            Usage: bedledger correct NUMBER [ACT] --why REASON [what is different]
            Replace an entry by the whole new fact. What you do not give again stays as it
            was; the first entry stays in the book and is shown as replaced, with your
            reason. Give what is different as you would give it to 'did'; --drop OPTION
            leaves one out.

            Example: bedledger correct 31 --why "figures swapped" --quantity 13.5kg
            """;
    private final Surroundings around;

    public Correct(Surroundings around) {
        this.around = around;
    }

    public int run(List<String> typed) {
        List<String> arguments = new ArrayList<>(typed);
        if (WriteOptions.asksForHelp(arguments)) {
            around.out().println(HELP + "\n" + WriteOptions.HELP);
            return Exit.OK;
        }
        WriteOptions options = WriteOptions.takenFrom(arguments);
        long number = number(arguments.remove(0));
        String why = why(arguments);
        List<String> drop = dropped(arguments);
        try (Writing writing = new Writing(around, options)) {
            Entry wrong = writing.book()
                    .entry(number)
                    .orElseThrow(() -> new Failure(
                            Exit.REFUSED,
                            "There is no entry #" + number + "; the last is #"
                                    + writing.book().size() + ". Find the number with: bedledger bed BED"));
            Draft draft = draft(writing, wrong, arguments, drop);
            if (draft.fact().equals(wrong.fact())
                    && draft.head().equals(wrong.head().withoutCorrection())) {
                throw new Failure(
                        Exit.REFUSED,
                        "Nothing is different from #" + number
                                + "; nothing was written. Say what is different, as in: bedledger" + " correct "
                                + number + " --why REASON --quantity 13.5kg");
            }
            Written written = writing.book().correct(number, draft, why, writing.writer(), writing.practiceTime());
            around.out().println("#" + number + " is replaced:");
            Echo.print(around, writing.told(written), writing.book().zone());
            writing.seal();
        }
        return Exit.OK;
    }

    static long number(String text) {
        try {
            return Long.parseLong(text.startsWith("#") ? text.substring(1) : text);
        } catch (NumberFormatException notANumber) {
            throw new Failure(
                    Exit.USAGE,
                    "'" + text
                            + "' is no entry number. Write it without '#', which a shell takes for a comment. The last entries:"
                            + " bedledger entry");
        }
    }

    static String why(List<String> arguments) {
        String why = WriteOptions.take(arguments, "--why");
        if (why == null || why.isBlank()) {
            throw refused("why", "", "the reason is missing", "add --why \"figures swapped\"");
        }
        try {
            return (String) FactReader.parse(String.class, why);
        } catch (BadValue bad) {
            throw new Refused(List.of(bad.as("why")));
        }
    }

    private static List<String> dropped(List<String> arguments) {
        List<String> drop = new ArrayList<>();
        for (String one = WriteOptions.take(arguments, "--drop");
                one != null;
                one = WriteOptions.take(arguments, "--drop")) {
            drop.add(one.replaceFirst("^--", ""));
        }
        return drop;
    }

    private static Draft draft(Writing writing, Entry wrong, List<String> arguments, List<String> drop) {
        ActKind kind = kind(wrong, arguments);
        Map<String, List<String>> said = new HashMap<>(asSaid(wrong));
        Map<String, List<String>> given = new ActParser(kind).parse(arguments);
        unseat(given, said, "quantity", "per-bed");
        unseat(given, said, "weight", "share");
        said.putAll(given);
        if (given.containsKey("from") && HeadOptions.takesFrom(kind)) {
            said.remove("on");
        }
        drop.forEach(said::remove);
        return writing.draft(kind, said);
    }

    /** The kind of the entry; its word may be said again, another kind's is refused. */
    private static ActKind kind(Entry wrong, List<String> arguments) {
        ActKind kind = wrong.kind();
        if (kind.word().isEmpty()) {
            boolean opens = wrong.fact() instanceof BookKeeping.BookOpened;
            throw refused(
                    "entry",
                    "#" + wrong.number(),
                    opens ? "the entry that opens the book stands for ever" : "an entry of its kind is not corrected",
                    opens ? "start another book: bedledger new" : "strike it, and write it again");
        }
        if (!arguments.isEmpty() && Acts.byWord(arguments.get(0)).isPresent()) {
            String word = arguments.remove(0);
            if (!word.equals(kind.word())) {
                throw refused(
                        "correct",
                        word,
                        "entry #" + wrong.number() + " is of another kind: " + kind.word(),
                        "strike it: bedledger strike " + wrong.number() + " --why REASON; then write: bedledger did "
                                + word + " …");
            }
        }
        return kind;
    }

    private static Refused refused(String what, String entered, String why, String wayOut) {
        return new Refused(List.of(new Problem(what, entered, why, wayOut)));
    }

    /** Where two fields say the same thing in two ways, the one given anew takes the place of the other. */
    private static void unseat(
            Map<String, List<String>> given, Map<String, List<String>> said, String one, String other) {
        if (given.containsKey(one)) {
            said.remove(other);
        } else if (given.containsKey(other)) {
            said.remove(one);
        }
    }

    /** An entry as it would be said again. */
    static Map<String, List<String>> asSaid(Entry entry) {
        Map<String, List<String>> said = new HashMap<>();
        for (Ask ask : entry.kind().asks()) {
            Object value = ask.in(entry.fact());
            List<String> texts = value instanceof List<?> list
                    ? list.stream().map(each -> text(ask, each)).toList()
                    : Stream.ofNullable(value).map(each -> text(ask, each)).toList();
            if (!texts.isEmpty()) {
                said.put(ask.option(), texts);
            }
        }
        Head head = entry.head();
        put(said, "on", head.doneOn());
        put(said, "at", head.time());
        put(said, "place-in-day", head.placeInDay());
        put(said, "noted-on", head.notedOn());
        put(said, "done-by", head.doneBy());
        put(said, "area", head.area());
        put(said, "people", head.people());
        put(said, "minutes", head.minutes());
        put(said, "equipment", head.equipment());
        put(said, "note", head.note());
        return said;
    }

    private static void put(Map<String, List<String>> said, String option, @Nullable Object value) {
        if (value != null) {
            said.put(option, List.of(value.toString()));
        }
    }

    private static String text(Ask ask, Object value) {
        if (value instanceof Enum<?> choice) {
            return bedledger.language.Words.of(choice);
        }
        return value instanceof Boolean yes
                ? yes ? "yes" : "no"
                // A value of several words would be read as several values of a list that is parted by blanks.
                : ask.list() && DraftReader.isPartedByBlanks(ask)
                        ? value.toString().replace(" ", "")
                        : value.toString();
    }
}

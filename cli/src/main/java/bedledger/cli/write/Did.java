package bedledger.cli.write;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.domain.Draft;
import bedledger.domain.Written;
import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Words;
import java.util.ArrayList;
import java.util.List;

/** {@code bedledger did WORD …}: records one act in one line. */
public final class Did {
    private final Surroundings around;

    public Did(Surroundings around) {
        this.around = around;
    }

    public int run(List<String> typed) {
        List<String> arguments = new ArrayList<>(typed);
        if (WriteOptions.asksForHelp(arguments)) {
            help(arguments);
            return Exit.OK;
        }
        WriteOptions options = WriteOptions.takenFrom(arguments);
        if (arguments.equals(List.of("-"))) {
            return new DidLines(around, options).run();
        }
        Spoken spoken = Spoken.of(arguments);
        try (Writing writing = new Writing(around, options)) {
            Written written = writing.write(spoken.drafts(writing));
            Echo.print(around, writing.told(written), writing.book().zone());
            writing.seal();
        }
        return Exit.OK;
    }

    private void help(List<String> arguments) {
        String word = arguments.isEmpty() ? "" : arguments.get(0);
        if (word.isEmpty() || word.startsWith("-")) {
            DidHelp.print(around.out());
            return;
        }
        if (word.equals("flip")) {
            around.out().println(Flip.HELP);
            around.out().print(WriteOptions.HELP);
        } else {
            around.out().print(new ActParser(kind(word)).help());
        }
    }

    /** What was typed after {@code did}, parsed before any book is opened. */
    interface Spoken {
        List<Draft> drafts(Writing writing);

        static Spoken of(List<String> words) {
            String word = words.get(0);
            List<String> rest = words.subList(1, words.size());
            if (word.equals("flip")) {
                return Flip.of(rest);
            }
            ActKind kind = kind(word);
            var said = new ActParser(kind).parse(rest);
            return writing -> List.of(writing.draft(kind, said));
        }
    }

    private static List<String> words() {
        List<String> words = new ArrayList<>(Acts.words());
        words.add("flip");
        return words;
    }

    static ActKind kind(String word) {
        return Acts.byWord(word)
                .orElseThrow(() -> new Failure(
                        Exit.USAGE,
                        "There is no act '" + word + "'."
                                + Words.nearest(word, words())
                                        .map(near -> " Did you mean 'did " + near + "'?")
                                        .orElse("")
                                + " All acts: bedledger did --help"));
    }
}

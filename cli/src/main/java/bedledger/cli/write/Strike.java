package bedledger.cli.write;

import bedledger.cli.Exit;
import bedledger.cli.Surroundings;
import bedledger.domain.Written;
import java.util.ArrayList;
import java.util.List;

/** {@code bedledger strike NUMBER --why …}: voids an entry in force. */
public final class Strike {
    private static final String HELP = """
            Usage: bedledger strike NUMBER --why REASON
            Void an entry that should never have been written. It stays in the book and is
            shown as struck, with your reason.

            Example: bedledger strike 31 --why "written twice"
            """;
    private final Surroundings around;

    public Strike(Surroundings around) {
        this.around = around;
    }

    public int run(List<String> typed) {
        List<String> arguments = new ArrayList<>(typed);
        if (WriteOptions.asksForHelp(arguments)) {
            around.out().println(HELP + "\n" + WriteOptions.HELP);
            return Exit.OK;
        }
        WriteOptions options = WriteOptions.takenFrom(arguments);
        long number = Correct.number(arguments.remove(0));
        String why = Correct.why(arguments);
        try (Writing writing = new Writing(around, options)) {
            Written written = writing.book().strike(number, why, writing.writer(), writing.practiceTime());
            around.out().println("#" + number + " is struck: " + why);
            written.says().forEach(says -> around.out().println("    " + says));
            writing.seal();
        }
        return Exit.OK;
    }
}

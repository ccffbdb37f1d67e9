package bedledger.cli.write;

import bedledger.cli.read.TextTable;
import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Fact;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Lists the acts, topic by topic. */
final class DidHelp {
    private static final int WIDTH = 80;
    private static final String INDENT = " ".repeat(21);

    static void print(PrintStream out) {
        out.println("""
                Usage: bedledger did ACT …          one act, one line
                       bedledger did ACT --help     what it asks for, with an example
                       bedledger did flip BEDS …    the acts of a flip in one command
                       bedledger did -              one act a line from standard input

                Days: today, yesterday, mon, 14, 2025-07-14.
                Beds: N1 N2, N1,N2, N1..N4, a field.
                Quantities carry their unit: 38.5kg, 85lb, 120heads, 0.25m2.
                """);
        List<Class<?>> topics = new ArrayList<>(Acts.topics());
        // The record itself, which stands first there, is said least.
        Collections.rotate(topics, -1);
        for (Class<?> topic : topics) {
            List<ActKind> kinds = Arrays.stream(topic.getPermittedSubclasses())
                    .map(type -> Acts.of(type.asSubclass(Fact.class)))
                    .filter(kind -> !kind.word().isEmpty())
                    .toList();
            out.println(bedledger.language.Words.kebab(topic.getSimpleName()).replace('-', ' '));
            kinds.forEach(kind -> print(out, kind.word(), kind.help()));
        }
        out.println();
        out.println("Of every act");
        HeadOptions.ALL.forEach((name, help) -> print(out, "--" + name, help));
        out.println();
        out.print(WriteOptions.HELP);
    }

    private static void print(PrintStream out, String word, String help) {
        List<String> lines = TextTable.wrapped(help, WIDTH - INDENT.length());
        out.println("  " + word + INDENT.substring(2 + word.length()) + lines.get(0));
        lines.stream().skip(1).forEach(line -> out.println(INDENT + line));
    }

    private DidHelp() {}
}

package bedledger.cli.write;

import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Fact;
import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;

/** Lists the acts, topic by topic. */
final class DidHelp {
    static void print(PrintStream out) {
        out.println("""
                Usage: bedledger did ACT …          one act, one line
                       bedledger did ACT --help     what it asks for, with an example
                       bedledger did flip BEDS …    the acts of a flip in one command
                       bedledger did -              one act a line from standard input

                Days: today, yesterday, mon, 14, 2025-07-14. Beds: N1 N2, N1,N2, N1..N4, a field.
                Quantities carry their unit: 38.5kg, 85lb, 120heads, 0.25m2.
                """);
        for (Class<?> topic : Acts.topics()) {
            List<ActKind> kinds = Arrays.stream(topic.getPermittedSubclasses())
                    .map(type -> Acts.of(type.asSubclass(Fact.class)))
                    .filter(kind -> !kind.word().isEmpty())
                    .toList();
            out.println(bedledger.language.Words.kebab(topic.getSimpleName()).replace('-', ' '));
            kinds.forEach(kind -> out.printf("  %-17s %s%n", kind.word(), kind.help()));
        }
        out.println();
        out.print(WriteOptions.HELP);
    }

    private DidHelp() {}
}

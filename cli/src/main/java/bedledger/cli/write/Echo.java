package bedledger.cli.write;

import bedledger.cli.Surroundings;
import bedledger.cli.read.TextTable;
import bedledger.domain.Written;
import bedledger.language.Caution;
import bedledger.language.Entry;
import bedledger.projections.history.FactWords;
import bedledger.projections.history.HeadWords;
import java.io.PrintStream;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Says what was written, as it stands in the book. */
final class Echo {
    private static final DateTimeFormatter FULL = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    static void print(Surroundings around, Written written, ZoneId zone) {
        for (Entry entry : written.entries()) {
            String more = HeadWords.of(entry);
            String words = FactWords.of(entry.fact()) + (more.isEmpty() ? "" : " (" + more + ")");
            lines(
                    around.out(),
                    "#" + entry.number() + "  ",
                    FULL.format(entry.head().doneOn()) + "  " + words);
        }
        written.says().forEach(says -> lines(around.out(), "    ", says));
        Entry last = written.entries().get(written.entries().size() - 1);
        around.out().println("    written " + MOMENT.format(last.writtenAt().atZone(zone)) + " by " + last.writtenBy());
        written.entries().stream()
                .map(entry -> entry.kind().caution())
                .filter(caution -> caution != Caution.NONE)
                .distinct()
                .forEach(caution -> lines(around.err(), "    ", "Caution: " + caution.words()));
    }

    private static void lines(PrintStream to, String first, String text) {
        String indent = first;
        for (String line : TextTable.wrapped(text, 80 - first.length())) {
            to.println(indent + line);
            indent = " ".repeat(first.length());
        }
    }

    private Echo() {}
}

package bedledger.cli.write;

import bedledger.cli.Surroundings;
import bedledger.domain.Written;
import bedledger.language.Caution;
import bedledger.language.Entry;
import bedledger.projections.history.FactWords;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Says what was written, as it stands in the book. */
final class Echo {
    private static final DateTimeFormatter FULL = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    static void print(Surroundings around, Written written, ZoneId zone) {
        for (Entry entry : written.entries()) {
            around.out()
                    .println("#" + entry.number() + "  "
                            + FULL.format(entry.head().doneOn()) + "  " + FactWords.of(entry.fact()));
        }
        written.says().forEach(says -> around.out().println("    " + says));
        Entry last = written.entries().get(written.entries().size() - 1);
        around.out().println("    written " + MOMENT.format(last.writtenAt().atZone(zone)) + " by " + last.writtenBy());
        written.entries().stream()
                .map(entry -> entry.kind().caution())
                .filter(caution -> caution != Caution.NONE)
                .distinct()
                .forEach(caution -> around.err().println("    Caution: " + caution.words()));
    }

    private Echo() {}
}

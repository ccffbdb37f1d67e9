package bedledger.projections.trace;

import bedledger.language.Entry;
import bedledger.language.Fertility;
import bedledger.language.PileId;
import bedledger.language.Temperature;
import bedledger.language.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A pile with its log in a phrase. */
final class PileWords {
    static Node node(Book book, PileId pile) {
        List<Entry> entries = book.entries(pile);
        List<String> said = new ArrayList<>();
        List<Temperature> readings = new ArrayList<>();
        long turned = 0;
        List<Entry> log = new ArrayList<>();
        for (Entry entry : entries) {
            boolean ofLog = entry.fact() instanceof Fertility && !(entry.fact() instanceof Fertility.Spread);
            if (ofLog) {
                log.add(entry);
            }
            if (entry.fact() instanceof Fertility.PileBuilt built) {
                said.add("built " + entry.head().doneOn()
                        + (built.method() == null
                                ? ""
                                : ", " + Words.of(built.method()).replace('-', ' '))
                        + (built.carbonToNitrogen() == null ? "" : ", C:N " + built.carbonToNitrogen())
                        + (built.contents().isEmpty() ? "" : ", of " + String.join(", ", built.contents())));
            } else if (entry.fact() instanceof Fertility.PileRead read) {
                readings.addAll(read.readings());
            } else if (entry.fact() instanceof Fertility.PileTurned) {
                turned++;
            } else if (entry.fact() instanceof Fertility.PileCured) {
                said.add("cured " + entry.head().doneOn());
            }
        }
        said.add(readings(readings));
        said.add(turned == 0 ? "no turning on record" : turned == 1 ? "turned once" : "turned " + turned + " times");
        return new Node(pile.key(), Node.Kind.PILE, "pile " + pile, String.join("; ", said), Book.numbers(log));
    }

    private static String readings(List<Temperature> readings) {
        Comparator<Temperature> byHeat =
                Comparator.comparing(reading -> reading.quantity().inBase());
        return readings.isEmpty()
                ? "no temperature on record"
                : readings.size() + " readings, "
                        + readings.stream().min(byHeat).orElseThrow() + " to "
                        + readings.stream().max(byHeat).orElseThrow();
    }

    private PileWords() {}
}

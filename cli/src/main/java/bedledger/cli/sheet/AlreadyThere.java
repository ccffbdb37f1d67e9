package bedledger.cli.sheet;

import bedledger.domain.Draft;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.Head;
import bedledger.projections.history.FactWords;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Tells which acts of a sheet are in the book already, however they got there, so that a sheet read twice writes nothing twice.
 *
 * <p>An act is known by its whole content but its place in the day (and the lot's name, where the sheet left that to us) and by its
 * ordinal: two equal picks on one day are two.
 */
final class AlreadyThere {
    private final Map<String, Integer> inBook = new HashMap<>();
    private final Map<String, Integer> inSheet = new HashMap<>();

    AlreadyThere(List<Entry> entries) {
        entries.stream().filter(entry -> entry.sequence() == 0).forEach(entry -> {
            inBook.merge(content(entry.head(), entry.fact(), true), 1, Integer::sum);
            inBook.merge(content(entry.head(), entry.fact(), false), 1, Integer::sum);
        });
    }

    boolean has(Draft draft, boolean lotNamed) {
        String content = content(draft.head(), draft.fact(), lotNamed);
        return inSheet.merge(content, 1, Integer::sum) <= inBook.getOrDefault(content, 0);
    }

    private static String content(Head head, Fact fact, boolean withLot) {
        String words = FactWords.of(fact);
        String named = !withLot && fact instanceof Harvesting.Harvested harvested
                ? words.replace("lot " + harvested.lot(), "lot self-named")
                : words;
        return (withLot ? "named " : "") + head.placed(0) + " " + named;
    }
}

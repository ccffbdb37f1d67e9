package bedledger.cli.sheet;

import bedledger.domain.Draft;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.Head;
import bedledger.language.PersonId;
import bedledger.projections.history.FactWords;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Tells which acts of a sheet are in the book already, however they got there, so that a sheet read twice writes nothing twice.
 *
 * <p>An act is known by its whole content but its place in the day (and the lot's name and who did it, where the sheet left that to us) and by its
 * ordinal: two equal picks on one day are two.
 */
final class AlreadyThere {
    private static final PersonId ANYBODY = new PersonId("anybody");
    private final Map<String, Integer> inBook = new HashMap<>();
    private final Map<String, Integer> inSheet = new HashMap<>();

    AlreadyThere(List<Entry> entries) {
        entries.stream()
                .filter(entry -> entry.sequence() == 0)
                .forEach(entry -> Stream.of(true, false)
                        .flatMap(lot -> Stream.of(true, false).map(by -> content(entry.head(), entry.fact(), lot, by)))
                        .forEach(content -> inBook.merge(content, 1, Integer::sum)));
    }

    boolean has(Draft draft, Set<String> said) {
        String content = content(draft.head(), draft.fact(), said.contains("lot"), said.contains("done-by"));
        return inSheet.merge(content, 1, Integer::sum) <= inBook.getOrDefault(content, 0);
    }

    private static String content(Head head, Fact fact, boolean withLot, boolean withDoer) {
        String words = FactWords.of(fact);
        String named = !withLot && fact instanceof Harvesting.Harvested harvested
                ? words.replace("lot " + harvested.lot(), "lot self-named")
                : words;
        Head known = withDoer ? head : head.by(ANYBODY);
        return (withLot ? "named " : "") + (withDoer ? "by " : "") + known.placed(0) + " " + named;
    }
}

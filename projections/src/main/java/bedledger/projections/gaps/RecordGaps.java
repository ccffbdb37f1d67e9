package bedledger.projections.gaps;

import bedledger.language.Acts;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.projections.gaps.Gap.Topic;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Acts without a doer, and papers that entries name but the book does not keep. */
final class RecordGaps {
    /** The papers of supply and land that an inspector asks to see, by the names of the fields. */
    private static final Set<String> PAPERS =
            Set.of("receipt", "certificate", "evidence", "approval", "report", "variance");

    static Stream<Gap> of(Looked looked) {
        List<Gap> gaps = new ArrayList<>();
        List<Entry> nobody = looked.done(Fact.class).stream()
                .filter(entry -> entry.head().doneBy() == null)
                .toList();
        if (!nobody.isEmpty()) {
            gaps.add(new Gap(
                    Topic.RECORD,
                    "who did the work",
                    "Of " + nobody.size() + " acts it is not recorded.",
                    Looked.correct(nobody.get(0), "--done-by WHO"),
                    Looked.numbers(nobody)));
        }
        List<Entry> unkept = unkept(looked);
        if (!unkept.isEmpty()) {
            gaps.add(new Gap(
                    Topic.RECORD,
                    "papers",
                    "Of " + unkept.size() + " entries the paper is named, and no copy is kept with the book.",
                    "attach " + unkept.get(0).number() + " FILE",
                    Looked.numbers(unkept)));
        }
        return gaps.stream();
    }

    private static List<Entry> unkept(Looked looked) {
        Set<Long> kept = new HashSet<>();
        looked.farm()
                .ofKind(BookKeeping.DocumentAttached.class)
                .forEach(entry -> kept.add(((BookKeeping.DocumentAttached) entry.fact()).entry()));
        return looked.done(Fact.class).stream()
                .filter(RecordGaps::namesPaper)
                .filter(entry -> entry.head().documents().isEmpty() && !kept.contains(entry.number()))
                .toList();
    }

    private static boolean namesPaper(Entry entry) {
        return Acts.of(entry.fact().getClass()).asks().stream()
                .anyMatch(ask -> PAPERS.contains(ask.name()) && ask.in(entry.fact()) != null);
    }

    private RecordGaps() {}
}

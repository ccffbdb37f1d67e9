package bedledger.cli.report;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Land;
import bedledger.language.Step;
import java.util.List;
import java.util.function.Predicate;

/** A bed's state in sentences, each linked to an entry behind it, also where the sentence itself names none. */
record StateLines(Asked asked, BedId bed) {
    List<Phrase> of(List<String> sentences) {
        return sentences.stream().map(this::line).toList();
    }

    private Phrase line(String sentence) {
        Phrase linked = asked.links().linked(upper(sentence));
        if (linked.pieces().stream().anyMatch(Piece::isLink)) {
            return linked;
        }
        Predicate<Entry> behind = sentence.startsWith("called ")
                ? entry -> entry.fact() instanceof Land.BedRenamed
                : sentence.startsWith("no longer worked")
                        ? entry -> entry.fact() instanceof Land.BedRetired
                        : sentence.startsWith("in field ") ? LandPart::outlines : entry -> true;
        return last(behind).isEmpty()
                ? linked
                : linked.plus(" (").plus(asked.links().entries(last(behind))).plus(")");
    }

    private List<Long> last(Predicate<Entry> behind) {
        return asked.farm().bed(bed).steps().stream()
                .filter(Step::fits)
                .map(Step::entry)
                .filter(entry -> !entry.head().doneOn().isAfter(asked.day()))
                .filter(behind)
                .reduce((earlier, later) -> later)
                .map(entry -> List.of(entry.number()))
                .orElse(List.of());
    }

    private static String upper(String sentence) {
        return sentence.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + sentence.substring(1);
    }
}

package bedledger.projections.gaps;

import bedledger.language.Entry;
import bedledger.language.FieldId;
import bedledger.language.Land;
import bedledger.projections.gaps.Gap.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What the land was used for before, on what evidence, and what lies beside it. */
final class LandGaps {
    static Stream<Gap> of(Looked looked) {
        return looked.places(FieldId.class).stream().flatMap(field -> of(looked, field).stream());
    }

    private static List<Gap> of(Looked looked, FieldId field) {
        List<Entry> entries = looked.entries(field);
        List<Gap> gaps = new ArrayList<>();
        List<Entry> declared = entries.stream()
                .filter(entry -> entry.fact() instanceof Land.LandUseDeclared)
                .toList();
        if (declared.isEmpty()) {
            gaps.add(gap(
                    field,
                    "What was put on the land in the years before is not declared.",
                    "did declare-land " + Looked.typed(field) + " --none-since DATE --evidence \"AFFIDAVIT\"",
                    entries));
        }
        declared.stream()
                .filter(entry -> ((Land.LandUseDeclared) entry.fact()).evidence() == null)
                .forEach(entry -> gaps.add(gap(
                        field,
                        "Its land use is declared without evidence.",
                        Looked.correct(entry, "--evidence \"AFFIDAVIT\""),
                        List.of(entry))));
        if (entries.stream().noneMatch(entry -> entry.fact() instanceof Land.NeighbourDeclared)) {
            gaps.add(gap(
                    field,
                    "What lies beside it, and what buffer there is, is not recorded.",
                    "did declare-neighbour " + Looked.typed(field) + " --side SIDE --use USE --buffer BUFFER",
                    List.of()));
        }
        return gaps;
    }

    private static Gap gap(FieldId field, String says, String command, List<Entry> entries) {
        return new Gap(Topic.LAND, "field " + field, says, command, Looked.numbers(entries));
    }

    private LandGaps() {}
}

package bedledger.projections.due;

import bedledger.language.BedId;
import bedledger.projections.due.DueItem.Kind;
import bedledger.projections.findings.MayI;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Beds that nobody goes into after a spraying, to the hour. */
final class KeepOuts {
    static Stream<DueItem> of(Asked asked) {
        Map<Long, List<MayI.KeepOut>> sprayings = new LinkedHashMap<>();
        asked.beds().stream()
                .flatMap(bed -> asked.may().enter(bed, asked.moment()).stream())
                .forEach(out -> sprayings
                        .computeIfAbsent(out.entry(), entry -> new ArrayList<>())
                        .add(out));
        return sprayings.values().stream().map(outs -> item(asked, outs));
    }

    private static DueItem item(Asked asked, List<MayI.KeepOut> outs) {
        MayI.KeepOut first = outs.get(0);
        List<BedId> beds = outs.stream().map(MayI.KeepOut::bed).toList();
        String where = Asked.list(beds);
        return new DueItem(
                Kind.NOT_YET,
                first.until().toLocalDate(),
                where,
                Asked.sorted(beds),
                "nobody goes into " + where + " before " + first.until().toLocalDate() + " "
                        + first.until().toLocalTime(),
                "Sprayed with " + first.product() + "; the label has the last word.",
                List.of(first.entry()),
                "entry " + first.entry(),
                asked.rule(PickWords.RE_ENTRY)
                        .map(rule -> rule.sheet().citation())
                        .orElse("the label"));
    }

    private KeepOuts() {}
}

package bedledger.projections.due;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Care;
import bedledger.language.Entry;
import bedledger.projections.due.DueItem.Kind;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Standing crops that were sprayed, where the label's days before harvest are not in the book: silence is no leave. */
final class LabelDays {
    static Stream<DueItem> of(Asked asked) {
        Map<Long, Entry> sprayings = new LinkedHashMap<>();
        asked.beds().forEach(bed -> since(asked, bed).forEach(entry -> sprayings.put(entry.number(), entry)));
        return sprayings.values().stream().map(entry -> item(asked, entry));
    }

    private static Stream<Entry> since(Asked asked, BedId bed) {
        LocalDate planted = asked.state(bed).crops().stream()
                .filter(stand -> !stand.cover())
                .map(BedState.Stand::since)
                .min(Comparator.naturalOrder())
                .orElse(LocalDate.MAX);
        return asked.done(bed, Care.Sprayed.class).stream()
                .filter(entry -> !entry.head().doneOn().isBefore(planted)
                        && ((Care.Sprayed) entry.fact()).preHarvestDays() == null);
    }

    private static DueItem item(Asked asked, Entry entry) {
        Care.Sprayed spray = (Care.Sprayed) entry.fact();
        List<BedId> beds = spray.beds();
        return new DueItem(
                Kind.LOOK,
                entry.head().doneOn(),
                Asked.list(beds),
                Asked.sorted(beds),
                spray.product() + " on " + Asked.list(beds) + ", "
                        + entry.head().doneOn()
                        + ": the label's days before harvest are not recorded; look before you pick",
                "",
                List.of(entry.number()),
                "correct " + entry.number() + " --pre-harvest-days NUMBER --why \"from the label\"",
                asked.rule(PickWords.SPRAY).map(rule -> rule.sheet().citation()).orElse("the label"));
    }

    private LabelDays() {}
}

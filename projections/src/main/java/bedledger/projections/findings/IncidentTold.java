package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.Land;
import bedledger.language.LotId;
import bedledger.language.Oversight;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Drift and other contact are told to the certifier at once: 7 CFR 205.400(f). */
record IncidentTold(RuleSheet sheet, int years) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<Long, Set<LotId>> picked = inquiry.done(Land.IncidentReported.class).isEmpty()
                ? Map.of()
                : inquiry.pickedAfter(Land.IncidentReported.class::isInstance, years);
        Stream<Finding> incidents = inquiry.done(Land.IncidentReported.class).stream()
                .map(done -> incident(inquiry, done, picked.getOrDefault(done.number(), Set.of())));
        Stream<Finding> mishaps =
                inquiry.done(Oversight.MishapReported.class).stream().map(done -> mishap(inquiry, done));
        return Stream.concat(incidents, mishaps).toList();
    }

    private Finding incident(Inquiry inquiry, Done<Land.IncidentReported> done, Set<LotId> picked) {
        Land.IncidentReported said = done.fact();
        boolean substance = Said.DRIFT.in(said.what());
        List<BedId> beds = said.beds();
        Draft draft = new Draft(sheet, inquiry, Wording.list(beds) + " " + said.what(), done.day())
                .at(beds)
                .lots(substance ? picked : Set.of())
                .restsOn(done.entry());
        return judged(
                draft,
                "“" + said.what() + "” on " + Wording.list(beds) + " on " + done.day(),
                said.certifierTold(),
                substance);
    }

    private Finding mishap(Inquiry inquiry, Done<Oversight.MishapReported> done) {
        Oversight.MishapReported said = done.fact();
        String where = said.lots().isEmpty() ? String.valueOf(said.thing()) : Wording.lots(said.lots());
        Draft draft = new Draft(sheet, inquiry, where + " " + said.what(), done.day())
                .lots(said.lots())
                .restsOn(done.entry());
        return judged(draft, "“" + said.what() + "”, " + where + ", on " + done.day(), said.certifierTold(), false);
    }

    private static Finding judged(Draft draft, String what, @Nullable Boolean told, boolean substance) {
        if (told == null) {
            return draft.settledBy(
                            "Tell the certifier if it may bear on the produce, and correct the entry: --certifier-told yes, or no.")
                    .says(Outcome.INCOMPLETE, what + ": whether the certifier was told is not recorded.");
        }
        if (told) {
            return draft.says(
                    Outcome.MET,
                    what + ": the certifier was told, as recorded. What becomes of the produce is theirs to say.");
        }
        return substance
                ? draft.settledBy(
                                "Tell the certifier now, enter it, and let nothing from there go out as organic before the answer.")
                        .says(Outcome.NOT_MET, what + ": the certifier was not told.")
                : draft.settledBy(
                                "Ask the certifier whether they want to hear of such a thing, and enter that they were told.")
                        .says(
                                Outcome.ASK,
                                what + ": the certifier was not told; it is to be told what may bear on the produce.");
    }
}

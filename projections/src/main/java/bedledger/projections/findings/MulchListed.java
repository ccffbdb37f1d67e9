package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BedWork;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.LotId;
import bedledger.language.MulchKind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Which films may lie on the soil at all: no PVC, no biodegradable film unless approved, 7 CFR 205.601(b)(2). */
record MulchListed(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<Long, Set<LotId>> lots = pickedMeanwhile(inquiry);
        Stream<Finding> mulches = inquiry.done(BedWork.Mulched.class).stream()
                .flatMap(done ->
                        mulch(inquiry, done, done.fact().beds(), done.fact().kind(), lots).stream());
        Stream<Finding> found = inquiry.done(Land.Found.class).stream()
                .flatMap(done ->
                        mulch(inquiry, done, done.fact().beds(), done.fact().mulch(), lots).stream());
        Stream<Finding> tarps = inquiry.done(BedWork.Tarped.class).stream()
                .filter(done -> Boolean.TRUE.equals(done.fact().pvc()))
                .map(done -> tarp(inquiry, done));
        return Stream.of(mulches, found, tarps).flatMap(all -> all).toList();
    }

    /** By the entry that laid a mulch, the lots picked from the bed while it lay there. */
    private static Map<Long, Set<LotId>> pickedMeanwhile(Inquiry inquiry) {
        Map<Long, Set<LotId>> lots = new TreeMap<>();
        for (BedId bed : inquiry.beds()) {
            inquiry.steps(bed)
                    .forEach(step -> step.as(Harvesting.Harvested.class)
                            .ifPresent(harvest -> step.before().mulches().stream()
                                    .map(BedState.Laid::entry)
                                    .forEach(laid -> lots.computeIfAbsent(laid, entry -> new LinkedHashSet<>())
                                            .add(harvest.fact().lot()))));
        }
        return lots;
    }

    private Optional<Finding> mulch(
            Inquiry inquiry, Done<?> laid, List<BedId> beds, @Nullable MulchKind kind, Map<Long, Set<LotId>> lots) {
        if (kind != MulchKind.PVC && kind != MulchKind.BIODEGRADABLE_FILM) {
            return Optional.empty();
        }
        String film = kind == MulchKind.PVC ? "PVC mulch" : "biodegradable film";
        List<LotId> picked = new ArrayList<>(lots.getOrDefault(laid.number(), Set.of()));
        Draft draft = new Draft(sheet, inquiry, Wording.list(beds) + " " + film, laid.day())
                .at(beds)
                .lots(picked)
                .restsOn(laid.entry());
        String where = " on " + Wording.list(beds) + " since " + laid.day();
        return Optional.of(
                kind == MulchKind.PVC
                        ? draft.citing("7 CFR 205.601(b)(2)(ii)")
                                .settledBy(
                                        "Take it off, and ask the certifier what becomes of the lots picked from it.")
                                .says(
                                        Outcome.NOT_MET,
                                        "PVC mulch" + where + ": plastic mulch may be of anything but PVC; "
                                                + Wording.lots(picked) + " picked from it.")
                        : draft.citing("7 CFR 205.2 “Biodegradable biobased mulch film”, 205.601(b)(2)(iii)")
                                .settledBy(
                                        "Keep the certifier's approval of this very film on file; “biodegradable” on a label is not"
                                                + " enough (NOP Policy Memo 15-1).")
                                .says(
                                        Outcome.ASK,
                                        "Biodegradable film" + where
                                                + ": it may lie and stay there only if the certifier approved it."));
    }

    private Finding tarp(Inquiry inquiry, Done<BedWork.Tarped> tarped) {
        List<BedId> beds = tarped.fact().beds();
        return new Draft(sheet, inquiry, Wording.list(beds) + " PVC tarp", tarped.day())
                .at(beds)
                .restsOn(tarped.entry())
                .citing("7 CFR 205.601(b)(2)(ii)")
                .settledBy(
                        "Ask the certifier before it is laid again; polyethylene silage film raises no such question.")
                .says(
                        Outcome.ASK,
                        "PVC tarp on " + Wording.list(beds) + " from " + tarped.day()
                                + ": the list of plastic mulches and covers leaves PVC out, and does not name tarps.");
    }
}

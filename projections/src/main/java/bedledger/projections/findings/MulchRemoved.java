package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Entry;
import bedledger.language.Land;
import bedledger.language.MulchKind;
import bedledger.language.Words;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Plastic mulch comes off the field at the end of the season, 7 CFR 205.206(c)(6). */
record MulchRemoved(RuleSheet sheet) implements Rule {
    private static final EnumSet<MulchKind> TO_REMOVE = EnumSet.of(MulchKind.POLYETHYLENE, MulchKind.LANDSCAPE_FABRIC);

    /** One mulch on one bed: what came of the crops in it, and of itself. */
    private static final class Lying {
        private final BedState.Laid laid;
        private boolean cropped;
        private @Nullable BedStep cropEnded;
        private boolean nextYear;
        private @Nullable Entry removed;

        Lying(BedState.Laid laid) {
            this.laid = laid;
        }

        void take(BedStep step) {
            boolean crops = !step.after().crops().isEmpty();
            BedStep ended = cropEnded;
            if (ended != null && !nextYear && crops) {
                nextYear = step.day().getYear() > ended.day().getYear();
                cropEnded = nextYear ? ended : null;
            }
            if (cropped && !crops && cropEnded == null) {
                cropEnded = step;
            }
            cropped = cropped || crops;
            if (!step.after().mulches().contains(laid)) {
                removed = step.entry();
            }
        }
    }

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.beds().stream()
                .flatMap(bed -> lying(inquiry, bed).stream().flatMap(lying -> finding(inquiry, bed, lying).stream()))
                .toList();
    }

    /** What lay on a bed in its own time; what lies when it is split is told of its parts. */
    private static List<Lying> lying(Inquiry inquiry, BedId bed) {
        Map<BedState.Laid, Lying> open = new LinkedHashMap<>();
        List<Lying> told = new ArrayList<>();
        for (BedStep step : inquiry.steps(bed)) {
            step.after().mulches().stream()
                    .filter(laid -> laid.mulch() != null && TO_REMOVE.contains(laid.mulch()))
                    .forEach(laid -> open.computeIfAbsent(laid, Lying::new));
            open.values().forEach(lying -> lying.take(step));
            open.values().removeIf(lying -> lying.removed != null && (!step.own() || told.add(lying)));
            if (step.fact() instanceof Land.BedSplit split && split.bed().equals(bed)) {
                open.clear();
            }
        }
        told.addAll(open.values());
        return told;
    }

    private Optional<Finding> finding(Inquiry inquiry, BedId bed, Lying lying) {
        MulchKind kind = lying.laid.mulch();
        BedStep ended = lying.cropEnded;
        if (kind == null) {
            return Optional.empty();
        }
        Draft draft = new Draft(sheet, inquiry, bed + " " + Words.of(kind), lying.laid.since())
                .at(bed)
                .restsOn(List.of(lying.laid.entry()));
        String what =
                Wording.capital(Words.of(kind).replace('-', ' ')) + " mulch on " + bed + " since " + lying.laid.since();
        Entry removed = lying.removed;
        if (removed != null) {
            return Optional.of(removed(draft, what, ended, removed));
        }
        return ended == null ? Optional.empty() : Optional.of(open(inquiry, draft, what, ended, bed));
    }

    private static Finding removed(Draft draft, String what, @Nullable BedStep ended, Entry removed) {
        LocalDate day = removed.head().doneOn();
        if (ended != null && ended.number() != removed.number()) {
            draft.restsOn(ended.entry())
                    .counting("crop ended " + ended.day() + ", removed " + day + ": "
                            + Wording.days(ChronoUnit.DAYS.between(ended.day(), day)) + " after");
        }
        return draft.restsOn(removed).says(Outcome.MET, what + ": removed on " + day + ".");
    }

    private static Finding open(Inquiry inquiry, Draft draft, String what, BedStep ended, BedId bed) {
        return draft.restsOn(ended.entry())
                .counting("crop ended " + ended.day() + ", no removal by " + inquiry.asOf() + ": "
                        + Wording.days(ChronoUnit.DAYS.between(ended.day(), inquiry.asOf())))
                .settledBy("Take it off, and enter it: did unmulch " + bed + " --on DATE.")
                .says(
                        Outcome.INCOMPLETE,
                        what + ": the crop in it ended on " + ended.day() + ", and no removal is recorded by "
                                + inquiry.asOf() + ".");
    }
}

package bedledger.projections.findings;

import bedledger.language.Fertility;
import bedledger.language.PileMethod;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/** The treatment processes of 21 CFR 112.54(b): no upper limit and no carbon to nitrogen, but curing. */
record CompostFda(RuleSheet sheet, Figures figures) implements Rule {
    private static final EnumSet<Heat> WARM = EnumSet.of(Heat.RIGHT, Heat.HOT);
    private static final EnumSet<Heat> OR_NOT_READ = EnumSet.of(Heat.RIGHT, Heat.HOT, Heat.NOT_READ);

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Fertility.PileBuilt.class).stream()
                .filter(built -> Ingredients.of(built.fact()) != Ingredients.PLANT)
                .map(built -> judge(inquiry, built))
                .toList();
    }

    private Finding judge(Inquiry inquiry, Done<Fertility.PileBuilt> built) {
        PileLog log = PileLog.of(inquiry, built.fact().pile(), inquiry.asOf());
        PileVerdict verdict = new PileVerdict();
        heat(built.fact().method(), log, verdict);
        log.cured()
                .ifPresentOrElse(
                        day -> verdict.add(Outcome.MET, "curing noted on " + day),
                        () -> verdict.add(Outcome.INCOMPLETE, "no curing is noted"));
        return new Draft(sheet, inquiry, "pile " + log.pile(), built.day())
                .at(log.pile())
                .at(log.beds())
                .restsOn(log.entries())
                .counting(verdict.everything())
                .settledBy(settles(verdict.outcome()))
                .says(verdict.outcome(), Wording.capital(log.words()) + ": " + verdict.words() + ".");
    }

    private void heat(@Nullable PileMethod method, PileLog log, PileVerdict verdict) {
        SortedMap<LocalDate, Heat> heat = log.heat(figures);
        if (method == null) {
            verdict.add(Outcome.INCOMPLETE, "how the pile was made is not recorded");
        } else if (method == PileMethod.UNMANAGED) {
            verdict.add(Outcome.NOT_MET, "the pile is recorded as unmanaged");
        } else if (heat.isEmpty()) {
            verdict.add(Outcome.INCOMPLETE, "no temperature is recorded");
        } else if (method == PileMethod.STATIC_AERATED || method == PileMethod.IN_VESSEL) {
            int run = PileLog.longestRun(PileLog.days(heat, WARM));
            int possible = PileLog.longestRun(PileLog.days(heat, OR_NOT_READ));
            days(run, possible, figures.whole("fda.static.days"), "in a row ", log, verdict);
        } else {
            int shown = PileLog.days(heat, WARM).size();
            int possible = PileLog.days(heat, OR_NOT_READ).size();
            days(shown, possible, figures.whole("fda.turned.days"), "", log, verdict);
            turns(log, verdict);
        }
    }

    private void days(int shown, int possible, int asked, String how, PileLog log, PileVerdict verdict) {
        boolean open = possible >= asked || log.underWay(figures);
        verdict.add(
                shown >= asked ? Outcome.MET : open ? Outcome.INCOMPLETE : Outcome.NOT_MET,
                Wording.days(shown) + " " + how + "at or above " + figures.number("compost.low.f") + " °F shown, "
                        + asked + " asked");
    }

    private void turns(PileLog log, PileVerdict verdict) {
        int asked = figures.whole("fda.turned.turns");
        int turns = log.turns().size();
        boolean open = turns == 0 || log.underWay(figures);
        verdict.add(
                turns >= asked ? Outcome.MET : open ? Outcome.INCOMPLETE : Outcome.NOT_MET,
                Wording.turns(turns) + ", " + asked + " asked");
    }

    private static String settles(Outcome outcome) {
        return switch (outcome) {
            case MET -> "";
            case INCOMPLETE ->
                "Enter what is missing from the pile's own log; curing with: did cure-pile PILE --days DAYS.";
            default ->
                "Another scientifically valid process may serve (21 CFR 112.54, 112.55); keep its proof on file.";
        };
    }
}

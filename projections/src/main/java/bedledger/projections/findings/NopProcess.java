package bedledger.projections.findings;

import bedledger.language.Fertility;
import bedledger.language.PileMethod;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/** The compost process of 7 CFR 205.203(c)(2): carbon to nitrogen, days in the band, turns. */
final class NopProcess {
    private static final EnumSet<Heat> SHOWN = EnumSet.of(Heat.RIGHT);
    private static final EnumSet<Heat> OR_HOT = EnumSet.of(Heat.RIGHT, Heat.HOT);
    private static final EnumSet<Heat> OR_NOT_READ = EnumSet.of(Heat.RIGHT, Heat.HOT, Heat.NOT_READ);

    private final Inquiry inquiry;
    private final Figures figures;
    private final PileLog log;
    private final SortedMap<LocalDate, Heat> heat;
    private final PileVerdict verdict = new PileVerdict();

    private NopProcess(Inquiry inquiry, Figures figures, PileLog log) {
        this.inquiry = inquiry;
        this.figures = figures;
        this.log = log;
        this.heat = log.heat(figures);
    }

    static PileVerdict judge(Inquiry inquiry, Figures figures, PileLog log) {
        NopProcess process = new NopProcess(inquiry, figures, log);
        Fertility.PileBuilt built = log.built();
        if (built == null) {
            return process.verdict.add(Outcome.INCOMPLETE, "the building of the pile is not recorded");
        }
        process.carbonToNitrogen(built);
        process.method(built.method());
        process.tooHot();
        return process.verdict;
    }

    /** What the feedstocks come to stands beside the record: a rule judges what was written down. */
    private void carbonToNitrogen(Fertility.PileBuilt built) {
        inquiry.mixed(built)
                .ifPresent(ratio -> verdict.note("By its feedstocks the mix comes to C:N " + ratio
                        + ": an estimate beside the record, never in place of a ratio written down."));
        if (built.carbonToNitrogen() == null) {
            verdict.add(Outcome.INCOMPLETE, "the carbon to nitrogen ratio at the start is not recorded");
            return;
        }
        BigDecimal ratio = built.carbonToNitrogen().number();
        BigDecimal low = figures.number("compost.cn.low");
        BigDecimal high = figures.number("compost.cn.high");
        boolean within = ratio.compareTo(low) >= 0 && ratio.compareTo(high) <= 0;
        verdict.add(
                within ? Outcome.MET : Outcome.NOT_MET,
                "C:N " + ratio.toPlainString() + " at the start, " + low + " to " + high + " asked, ends included");
    }

    private void method(@Nullable PileMethod method) {
        if (method == null) {
            verdict.add(
                    Outcome.INCOMPLETE, "how the pile was made (windrow, static-aerated, in-vessel) is not recorded");
        } else if (method == PileMethod.UNMANAGED) {
            verdict.add(Outcome.NOT_MET, "the pile is recorded as unmanaged");
        } else if (heat.isEmpty()) {
            verdict.add(Outcome.INCOMPLETE, "no temperature is recorded");
        } else if (method == PileMethod.WINDROW) {
            windrow();
        } else if (method == PileMethod.TURNED_OTHERWISE) {
            otherwise();
        } else {
            threeDays();
        }
    }

    private void windrow() {
        int asked = figures.whole("windrow.days");
        verdict.add(
                windrowDays(asked), measured(SHOWN) + " of " + asked + " days shown in the band" + span() + missing());
        turns(asked);
        List<LocalDate> shown = PileLog.days(heat, SHOWN);
        if (shown.size() >= asked && PileLog.longestRun(shown) < asked) {
            verdict.note("The days in the band do not all follow each other; the text does not say that they must.");
        }
    }

    private Outcome windrowDays(int asked) {
        if (measured(SHOWN) >= asked) {
            return Outcome.MET;
        }
        if (measured(OR_HOT) >= asked) {
            return Outcome.ASK;
        }
        return measured(OR_NOT_READ) >= asked || log.underWay(figures) ? Outcome.INCOMPLETE : Outcome.NOT_MET;
    }

    private int measured(EnumSet<Heat> wanted) {
        List<LocalDate> days = PileLog.days(heat, wanted);
        return inquiry.is(Reading.WINDROW_DAYS_CONSECUTIVE) ? PileLog.longestRun(days) : days.size();
    }

    private void turns(int asked) {
        int turnsAsked = figures.whole("windrow.turns");
        List<LocalDate> days = PileLog.days(heat, OR_HOT);
        int during = days.isEmpty() ? 0 : between(days.get(0), days.get(days.size() - 1));
        String words = Wording.turns(during) + " while in the band, " + turnsAsked + " asked";
        if (mostTurnsWithin(days, asked) >= turnsAsked) {
            verdict.add(Outcome.MET, words);
            afterTheLastTurn(turnsAsked);
        } else if (during >= turnsAsked) {
            verdict.add(Outcome.ASK, words + ", but not within any " + asked + " of those days");
        } else if (log.turns().isEmpty()) {
            verdict.add(Outcome.INCOMPLETE, "no turn is recorded, " + turnsAsked + " asked");
        } else {
            verdict.add(log.underWay(figures) ? Outcome.INCOMPLETE : Outcome.NOT_MET, words);
        }
    }

    private int mostTurnsWithin(List<LocalDate> days, int asked) {
        int most = 0;
        for (int first = 0; first < Math.max(1, days.size() - asked + 1) && !days.isEmpty(); first++) {
            most = Math.max(most, between(days.get(first), days.get(Math.min(days.size(), first + asked) - 1)));
        }
        return most;
    }

    private int between(LocalDate first, LocalDate last) {
        return log.turns().subSet(first, last.plusDays(1)).size();
    }

    private void afterTheLastTurn(int turnsAsked) {
        LocalDate fifth = List.copyOf(log.turns()).get(turnsAsked - 1);
        if (!log.readings().lastKey().isAfter(fifth)) {
            verdict.note("No reading follows turn " + turnsAsked + " on " + fifth
                    + ", so nothing shows that the pile heated again after it.");
        }
    }

    private void threeDays() {
        int asked = figures.whole("static.days");
        List<LocalDate> shown = PileLog.days(heat, SHOWN);
        int run = PileLog.longestRun(shown);
        boolean anyDays = !inquiry.is(Reading.THREE_COMPOST_DAYS_CONSECUTIVE) && shown.size() >= asked;
        String words = shown.size() + " days shown in the band" + span() + ", " + run + " of them in a row, " + asked
                + " asked" + missing();
        if (run >= asked || anyDays) {
            verdict.add(Outcome.MET, words);
        } else if (PileLog.longestRun(PileLog.days(heat, OR_HOT)) >= asked) {
            verdict.add(Outcome.ASK, words);
        } else if (PileLog.longestRun(PileLog.days(heat, OR_NOT_READ)) >= asked) {
            verdict.add(Outcome.INCOMPLETE, words);
        } else if (shown.size() >= asked) {
            verdict.add(Outcome.ASK, words + "; the text does not say that they must follow each other");
        } else {
            verdict.add(log.underWay(figures) ? Outcome.INCOMPLETE : Outcome.NOT_MET, words);
        }
    }

    private void otherwise() {
        int asked = figures.whole("guidance.days");
        int warm = PileLog.days(heat, OR_HOT).size();
        boolean enough = warm >= asked;
        verdict.add(
                enough ? Outcome.ASK : log.underWay(figures) ? Outcome.INCOMPLETE : Outcome.NOT_MET,
                "it is neither a windrow, nor static and aerated, nor in a vessel; " + warm + " days at or above "
                        + figures.number("compost.low.f") + " °F shown, and NOP 5021 asks another process for "
                        + asked);
    }

    private void tooHot() {
        List<LocalDate> hot = PileLog.days(heat, EnumSet.of(Heat.HOT));
        if (!hot.isEmpty()) {
            verdict.add(
                    Outcome.ASK,
                    "above " + figures.number("compost.high.f") + " °F on "
                            + String.join(
                                    ", ", hot.stream().map(LocalDate::toString).toList()));
        }
    }

    private String span() {
        List<LocalDate> days = PileLog.days(heat, SHOWN);
        return days.isEmpty() ? "" : " (" + days.get(0) + " to " + days.get(days.size() - 1) + ")";
    }

    private String missing() {
        List<LocalDate> gaps = PileLog.days(heat, EnumSet.of(Heat.NOT_READ));
        return gaps.isEmpty()
                ? ""
                : ", no reading on "
                        + String.join(
                                ", ", gaps.stream().map(LocalDate::toString).toList());
    }
}

package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BedWork;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Soil work under a tarp that nobody is said to have folded back: a record that an inspector cannot follow, 7 CFR 205.103(b)(2). */
record TarpHarrowed(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<Long, List<BedId>> beds = new TreeMap<>();
        Map<Long, Entry> works = new HashMap<>();
        Map<Long, List<Long>> tarps = new HashMap<>();
        for (BedId bed : inquiry.beds()) {
            for (BedStep step : inquiry.steps(bed)) {
                BedState.Laid tarp = step.before().tarp();
                if (tarp != null && step.own() && soilWork(step.fact())) {
                    works.put(step.number(), step.entry());
                    beds.computeIfAbsent(step.number(), number -> new ArrayList<>())
                            .add(bed);
                    tarps.computeIfAbsent(step.number(), number -> new ArrayList<>())
                            .add(tarp.entry());
                }
            }
        }
        return beds.entrySet().stream()
                .map(work -> finding(
                        inquiry,
                        java.util.Objects.requireNonNull(works.get(work.getKey())),
                        work.getValue(),
                        tarps.getOrDefault(work.getKey(), List.of())))
                .toList();
    }

    private static boolean soilWork(Fact fact) {
        return fact instanceof BedWork.Tilled
                || fact instanceof Fertility.Incorporated
                || (fact instanceof BedWork.Harrowed harrowed && !Boolean.TRUE.equals(harrowed.tarpFoldedBack()));
    }

    private Finding finding(Inquiry inquiry, Entry work, List<BedId> beds, List<Long> tarps) {
        String where = Wording.list(beds);
        boolean harrowed = work.fact() instanceof BedWork.Harrowed;
        String folded = "If the tarp was folded back and laid again, correct the entry: did harrow "
                + where.replace(", ", ",") + " --tarp-folded-back. ";
        return new Draft(
                        sheet,
                        inquiry,
                        where + " " + work.kind().word(),
                        work.head().doneOn())
                .at(beds)
                .restsOn(work)
                .restsOn(tarps)
                .settledBy((harrowed ? folded : "") + "If the tarp was taken off, enter that: did untarp "
                        + where.replace(", ", ",") + " --on DATE.")
                .says(
                        Outcome.ASK,
                        where + ": " + done(work.fact()) + " on " + work.head().doneOn()
                                + ", while a tarp lay there and is not said to have been folded back or taken off.");
    }

    private static String done(Fact fact) {
        if (fact instanceof BedWork.Harrowed) {
            return "harrowed";
        }
        return fact instanceof BedWork.Tilled ? "tilled" : "soil worked";
    }
}

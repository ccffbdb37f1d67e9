package bedledger.projections.findings;

import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import bedledger.language.Harvesting;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Harvests, packings and the compost log say who did them: 7 CFR 205.103(b)(2), 21 CFR 112.161(a)(4). */
record DoerRecorded(RuleSheet sheet) implements Rule {
    private static final Set<Class<? extends Fact>> KINDS = Set.of(
            Harvesting.Harvested.class,
            Harvesting.LotsWashed.class,
            Harvesting.LotPacked.class,
            Harvesting.LotsJoined.class,
            Harvesting.LotSplit.class,
            Harvesting.EquipmentCleaned.class,
            Fertility.PileRead.class,
            Fertility.PileTurned.class);

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        List<Entry> asked = inquiry.farm().inForce().stream()
                .filter(inquiry::happened)
                .filter(entry -> KINDS.contains(entry.fact().getClass()))
                .toList();
        return Yearly.of(asked, entry -> entry.head().doneOn()).entrySet().stream()
                .map(year -> finding(inquiry, year.getKey(), year.getValue()))
                .toList();
    }

    private Finding finding(Inquiry inquiry, int year, List<Entry> all) {
        List<Entry> lacking =
                all.stream().filter(entry -> entry.head().doneBy() == null).toList();
        Entry first = lacking.isEmpty() ? all.get(0) : lacking.get(0);
        Draft draft = new Draft(sheet, inquiry, "work of " + year, first.head().doneOn());
        if (lacking.isEmpty()) {
            return draft.restsOn(first)
                    .says(
                            Outcome.MET,
                            "All " + all.size() + " entries of " + year
                                    + " of harvest, washing, packing and compost logs say who did the work.");
        }
        String kinds = lacking.stream()
                .collect(Collectors.groupingBy(
                        entry -> entry.kind().word(), java.util.TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(kind -> kind.getValue() + " " + kind.getKey())
                .collect(Collectors.joining(", "));
        return draft.restsOn(lacking.stream().map(Entry::number).toList())
                .settledBy(
                        "Correct them with --done-by PERSON, as far as it is known; the writer is on record in any case.")
                .says(
                        Outcome.INCOMPLETE,
                        lacking.size() + " of " + all.size() + " entries of " + year
                                + " of harvest, washing, packing and compost logs do not say who did the work: " + kinds
                                + ".");
    }
}

package bedledger.projections.findings;

import bedledger.language.Entry;
import bedledger.language.Harvesting;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** After produce that is not organic, tools and crates are cleaned before they touch what is: 7 CFR 205.272(a), 205.201(a)(5). */
record CleanOut(RuleSheet sheet, Figures figures) implements Rule {

    /** A harvest from clean land after one from land that is not, and the cleaning between, if there was one. */
    private record Turn(Done<Harvesting.Harvested> before, Done<Harvesting.Harvested> after, boolean cleaned) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return Yearly.of(turns(inquiry), turn -> turn.after().day()).entrySet().stream()
                .map(year -> finding(inquiry, year.getKey(), year.getValue()))
                .toList();
    }

    private List<Turn> turns(Inquiry inquiry) {
        List<Turn> turns = new ArrayList<>();
        List<Done<Harvesting.Harvested>> unclean = new ArrayList<>();
        boolean cleaned = false;
        for (Entry entry :
                inquiry.farm().inForce().stream().filter(inquiry::happened).toList()) {
            if (entry.fact() instanceof Harvesting.EquipmentCleaned) {
                cleaned = true;
            } else if (entry.fact() instanceof Harvesting.Harvested) {
                Done<Harvesting.Harvested> harvest = Done.of(entry, Harvesting.Harvested.class);
                Ground ground = Ground.of(inquiry, figures, harvest);
                if (ground == Ground.NOT_CLEAN) {
                    unclean.clear();
                    unclean.add(harvest);
                    cleaned = false;
                } else if (ground == Ground.CLEAN && !unclean.isEmpty()) {
                    turns.add(new Turn(unclean.get(0), harvest, cleaned));
                    unclean.clear();
                }
            }
        }
        return turns;
    }

    private Finding finding(Inquiry inquiry, int year, List<Turn> all) {
        List<Turn> not = all.stream().filter(turn -> !turn.cleaned()).toList();
        List<Turn> told = not.isEmpty() ? all : not;
        LocalDate day = told.get(0).after().day();
        Draft draft = new Draft(sheet, inquiry, "clean-out of " + year, day)
                .restsOn(told.stream().map(turn -> turn.before().number()).toList())
                .restsOn(told.stream().map(turn -> turn.after().number()).toList());
        String turns = told.stream()
                .map(turn -> turn.before().fact().lot() + " on " + turn.before().day() + ", then "
                        + turn.after().fact().lot() + " on " + turn.after().day())
                .collect(Collectors.joining("; "));
        return not.isEmpty()
                ? draft.says(
                        Outcome.MET,
                        "Cleaned each time between land that is not clean and land that is: " + turns + ".")
                : draft.lots(not.stream().map(turn -> turn.after().fact().lot()).toList())
                        .settledBy(
                                "Enter the cleaning of knives, crates and wash line between the two: did clean --what \"…\" --after \"…\".")
                        .says(
                                Outcome.INCOMPLETE,
                                "Picked from land that is not clean, then from land that is, and no cleaning between is recorded: "
                                        + turns + ".");
    }
}

package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.Care;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Each application of a substance says when, where, what, how much and by whom: 7 U.S.C. 6519(a)(2); in the EU book, points 1.9.3, 1.10.2. */
record ApplicationRecorded(RuleSheet sheet) implements Rule {

    /** What one application lacks; nothing if it is complete. */
    private record Application(Done<?> done, String what, List<BedId> beds, List<String> lacks) {
        String together() {
            return what + " in " + done.day().getYear();
        }

        boolean complete() {
            return lacks.isEmpty();
        }
    }

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<String, List<Application>> together = new LinkedHashMap<>();
        applications(inquiry)
                .forEach(one -> together.computeIfAbsent(one.together(), key -> new ArrayList<>())
                        .add(one));
        return together.entrySet().stream()
                .map(all -> finding(inquiry, all.getKey(), all.getValue()))
                .toList();
    }

    private static Stream<Application> applications(Inquiry inquiry) {
        Stream<Application> spread = inquiry.done(Fertility.Spread.class).stream()
                .map(done -> application(
                        done,
                        what(done.fact()),
                        done.fact().beds(),
                        done.fact().quantity() != null || done.fact().perBed() != null));
        Stream<Application> sprayed = inquiry.done(Care.Sprayed.class).stream()
                .map(done -> application(
                        done,
                        done.fact().product().name(),
                        done.fact().beds(),
                        done.fact().quantity() != null || done.fact().rate() != null));
        return Stream.concat(spread, sprayed);
    }

    static String what(Fertility.Spread spread) {
        if (spread.manure() != null) {
            return Ingredients.manure(spread.manure()) ? spread.manure() : spread.manure() + " manure";
        }
        return spread.pile() != null ? "compost of pile " + spread.pile() : String.valueOf(spread.material());
    }

    private static String uses(int number) {
        return number == 1 ? "1 use" : number + " uses";
    }

    private static Application application(Done<? extends Fact> done, String what, List<BedId> beds, boolean quantity) {
        List<String> lacks = new ArrayList<>();
        if (!quantity) {
            lacks.add("how much");
        }
        if (done.entry().head().doneBy() == null) {
            lacks.add("by whom");
        }
        return new Application(done, what, beds, lacks);
    }

    private Finding finding(Inquiry inquiry, String subject, List<Application> all) {
        List<Application> lacking = all.stream().filter(one -> !one.complete()).toList();
        List<Application> told = lacking.isEmpty() ? all : lacking;
        Draft draft = new Draft(sheet, inquiry, subject, told.get(0).done().day())
                .at(told.stream().flatMap(one -> one.beds().stream()).toList())
                .restsOn(told.stream().map(one -> one.done().number()).toList());
        if (lacking.isEmpty()) {
            String which = all.size() == 1 ? "its one use says" : "each of its " + all.size() + " uses says";
            return draft.says(
                    Outcome.MET,
                    Wording.capital(subject) + ": " + which
                            + " on which day and beds, how much, and by whom, by short id; the address is not looked for.");
        }
        String lacks = lacking.stream()
                .map(one -> one.done().day() + " (#" + one.done().number() + ") " + String.join(" and ", one.lacks()))
                .collect(Collectors.joining("; "));
        return draft.settledBy(
                        "Correct those entries with what the slips or the doer still know: the amount, and --done-by PERSON.")
                .says(
                        Outcome.INCOMPLETE,
                        Wording.capital(subject) + ", not recorded in " + lacking.size() + " of " + uses(all.size())
                                + ": " + lacks + ".");
    }
}

package bedledger.projections.findings;

import bedledger.language.Fertility;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** No manure from factory farming: 2021/1165 Annex II, with Case C-228/23 on what that is. */
record ManureOrigin(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<String, List<Done<Fertility.Spread>>> together = new LinkedHashMap<>();
        inquiry.done(Fertility.Spread.class).stream()
                .filter(done -> done.fact().manure() != null)
                .forEach(done -> together.computeIfAbsent(
                                ApplicationRecorded.what(done.fact()) + " in "
                                        + done.day().getYear(),
                                key -> new ArrayList<>())
                        .add(done));
        return together.entrySet().stream()
                .map(all -> finding(inquiry, all.getKey(), all.getValue()))
                .toList();
    }

    private static Outcome outcome(Fertility.Spread spread) {
        if (spread.source() == null) {
            return Outcome.INCOMPLETE;
        }
        if (Said.FACTORY_FARM.in(spread.source())) {
            return Outcome.NOT_MET;
        }
        return Said.OWN_OR_ORGANIC.in(spread.source()) ? Outcome.MET : Outcome.ASK;
    }

    private Finding finding(Inquiry inquiry, String subject, List<Done<Fertility.Spread>> all) {
        Outcome worst =
                Outcome.worst(all.stream().map(done -> outcome(done.fact())).toList());
        List<Done<Fertility.Spread>> told =
                all.stream().filter(done -> outcome(done.fact()) == worst).toList();
        String sources = told.stream()
                .map(done -> String.valueOf(done.fact().source()))
                .distinct()
                .collect(Collectors.joining("; "));
        Draft draft = new Draft(sheet, inquiry, subject, told.get(0).day())
                .at(told.stream().flatMap(done -> done.fact().beds().stream()).toList())
                .restsOn(told.stream().map(Done::number).toList())
                .settledBy(settles(worst));
        String what = Wording.capital(subject) + ": ";
        return switch (worst) {
            case MET -> draft.says(worst, what + "from " + sources + ".");
            case INCOMPLETE ->
                draft.says(worst, what + "where it came from is not recorded in " + Wording.times(told.size()) + ".");
            case ASK ->
                draft.says(worst, what + "from " + sources + "; whether that is factory farming is not recorded.");
            case NOT_MET -> draft.says(worst, what + "from " + sources + "; manure from factory farming is out.");
        };
    }

    private static String settles(Outcome outcome) {
        return switch (outcome) {
            case MET -> "";
            case INCOMPLETE -> "Correct the entries: --source \"whose stable, how kept\".";
            case ASK ->
                "Keep the supplier's word on how the animals are kept (cages, slats, land), and ask the control body.";
            case NOT_MET -> "Tell the control body, and take no more from there.";
        };
    }
}

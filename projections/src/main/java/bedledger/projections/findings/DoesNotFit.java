package bedledger.projections.findings;

import bedledger.language.Entry;
import bedledger.language.LotId;
import bedledger.language.Misfit;
import bedledger.language.Place;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An entry that cannot be, given what stands before it, stays in force and is told until someone corrects it. */
record DoesNotFit(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<Long, List<Misfit>> misfits = inquiry.farm().misfits();
        Stream<Finding> unfit = inquiry.farm().inForce().stream()
                .filter(entry -> misfits.containsKey(entry.number()) && inquiry.happened(entry))
                .map(entry -> finding(inquiry, entry, misfits.getOrDefault(entry.number(), List.of())));
        Stream<Finding> idle = inquiry.farm().standing().idle().stream()
                .filter(inquiry::happened)
                .map(entry -> idle(inquiry, entry));
        return Stream.concat(unfit, idle).toList();
    }

    private Finding finding(Inquiry inquiry, Entry entry, List<Misfit> misfits) {
        String why = misfits.stream()
                .map(misfit -> misfit.place() + ": " + misfit.why())
                .distinct()
                .collect(Collectors.joining("; "));
        String out = misfits.stream().map(Misfit::wayOut).distinct().collect(Collectors.joining("; "));
        return draft(inquiry, entry)
                .settledBy(Wording.capital(out) + ".")
                .says(
                        Outcome.INCOMPLETE,
                        "Entry " + entry.number() + " (" + entry.kind().word() + ", "
                                + entry.head().doneOn() + ") does not fit: " + why + ".");
    }

    private Finding idle(Inquiry inquiry, Entry entry) {
        return draft(inquiry, entry)
                .settledBy("Correct or strike the entry that is in force now, if it is still wrong.")
                .says(
                        Outcome.INCOMPLETE,
                        "Entry " + entry.number() + " answers an entry that was not in force, so it changes nothing.");
    }

    private Draft draft(Inquiry inquiry, Entry entry) {
        List<Place> places = entry.fact().places();
        List<LotId> lots = places.stream()
                .filter(LotId.class::isInstance)
                .map(LotId.class::cast)
                .toList();
        return new Draft(sheet, inquiry, "entry " + entry.number(), entry.head().doneOn())
                .at(places.stream().filter(place -> !(place instanceof LotId)).toList())
                .lots(lots)
                .restsOn(entry);
    }
}

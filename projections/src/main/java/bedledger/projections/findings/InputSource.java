package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.Fertility;
import bedledger.language.MaterialName;
import bedledger.language.Stock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Of every input its make-up and where it came from: 7 CFR 205.201(a)(2). */
record InputSource(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Stream<Finding> materials = MaterialUse.byMaterial(inquiry).entrySet().stream()
                .map(uses -> material(inquiry, uses.getKey(), uses.getValue()));
        Map<String, List<Done<Fertility.Spread>>> manures = new LinkedHashMap<>();
        inquiry.done(Fertility.Spread.class).stream()
                .filter(done -> done.fact().manure() != null)
                .forEach(done -> manures.computeIfAbsent(
                                ApplicationRecorded.what(done.fact()) + " in "
                                        + done.day().getYear(),
                                key -> new ArrayList<>())
                        .add(done));
        return Stream.concat(
                        materials,
                        manures.entrySet().stream().map(all -> manure(inquiry, all.getKey(), all.getValue())))
                .toList();
    }

    private Finding material(Inquiry inquiry, MaterialName material, List<MaterialUse> uses) {
        List<Done<Stock.MaterialListed>> listed = inquiry.done(material, Stock.MaterialListed.class);
        List<Done<Stock.MaterialReceived>> received = inquiry.done(material, Stock.MaterialReceived.class);
        List<Done<Stock.MixMade>> made = inquiry.done(material, Stock.MixMade.class).stream()
                .filter(mix -> mix.fact().mix().equals(material))
                .toList();
        List<String> lacks = new ArrayList<>();
        if (listed.stream().allMatch(done -> done.fact().composition() == null) && made.isEmpty()) {
            lacks.add("what is in it");
        }
        boolean maker = listed.stream().anyMatch(done -> done.fact().maker() != null);
        boolean supplier = received.stream()
                .anyMatch(done -> done.fact().supplier() != null || done.fact().receipt() != null);
        if (!maker && !supplier && made.isEmpty()) {
            lacks.add("who made or sold it");
        }
        List<BedId> beds = MaterialUse.beds(uses);
        Draft draft = new Draft(
                        sheet, inquiry, material.name(), MaterialUse.first(uses).day())
                .at(material)
                .at(beds)
                .restsOn(MaterialUse.numbers(uses))
                .restsOn(listed.stream().map(Done::number).toList())
                .restsOn(received.stream().map(Done::number).toList());
        return lacks.isEmpty()
                ? draft.says(Outcome.MET, material + ": its make-up and its source are on record.")
                : draft.settledBy("Correct the listing (--composition \"…\" --maker \"…\"), or enter what came in: did"
                                + " receive-material with --supplier and --receipt.")
                        .says(Outcome.INCOMPLETE, material + ": not recorded is " + String.join(", nor ", lacks) + ".");
    }

    private Finding manure(Inquiry inquiry, String subject, List<Done<Fertility.Spread>> all) {
        List<Done<Fertility.Spread>> without =
                all.stream().filter(done -> done.fact().source() == null).toList();
        List<Done<Fertility.Spread>> told = without.isEmpty() ? all : without;
        Draft draft = new Draft(sheet, inquiry, subject, told.get(0).day())
                .at(told.stream().flatMap(done -> done.fact().beds().stream()).toList())
                .restsOn(told.stream().map(Done::number).toList());
        return without.isEmpty()
                ? draft.says(Outcome.MET, Wording.capital(subject) + ": where it came from is on record.")
                : draft.settledBy("Correct the entries with where it came from: --source \"whose stable\".")
                        .says(
                                Outcome.INCOMPLETE,
                                Wording.capital(subject) + ": where it came from is not recorded in " + without.size()
                                        + " of " + Wording.times(all.size()) + ".");
    }
}

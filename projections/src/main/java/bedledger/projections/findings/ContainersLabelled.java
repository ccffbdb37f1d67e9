package bedledger.projections.findings;

import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.LotId;
import java.util.List;
import java.util.stream.Stream;

/** Bins, totes and boxes that are not sold as they are say that it is organic, and which lot: 7 CFR 205.307, since the enforcement rule. */
record ContainersLabelled(RuleSheet sheet) implements Rule {
    private record Put(Done<? extends Fact> done, LotId lot, boolean labelled) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        List<Put> put = Stream.concat(
                        inquiry.done(Harvesting.LotStored.class).stream()
                                .map(done ->
                                        put(done, done.fact().lot(), done.fact().where())),
                        inquiry.done(Harvesting.LotPacked.class).stream()
                                .map(done -> put(
                                        done,
                                        done.fact().lot(),
                                        String.valueOf(done.fact().into()))))
                .filter(one -> sheet.inForceOn(one.done().day()))
                .toList();
        return Yearly.of(put, one -> one.done().day()).entrySet().stream()
                .map(year -> finding(inquiry, year.getKey(), year.getValue()))
                .toList();
    }

    private static Put put(Done<? extends Fact> done, LotId lot, String into) {
        return new Put(
                done,
                lot,
                Said.LABELLED.in(into) || Said.LABELLED.in(done.entry().head().note()));
    }

    private Finding finding(Inquiry inquiry, int year, List<Put> all) {
        List<Put> without = all.stream().filter(one -> !one.labelled()).toList();
        List<Put> told = without.isEmpty() ? all : without;
        Draft draft = new Draft(
                        sheet,
                        inquiry,
                        "containers of " + year,
                        told.get(0).done().day())
                .restsOn(told.stream().map(one -> one.done().number()).toList());
        return without.isEmpty()
                ? draft.says(
                        Outcome.MET,
                        "All " + all.size() + " packings and storings of " + year + " are recorded as labelled.")
                : draft.settledBy(
                                "Mark bins and boxes “organic” with the lot; a tag will do. Note it once it is so: --note"
                                        + " \"bins tagged\", or correct these.")
                        .says(
                                Outcome.INCOMPLETE,
                                without.size() + " of " + all.size() + " packings and storings of " + year
                                        + " do not record that the containers said “organic” and the lot.");
    }
}

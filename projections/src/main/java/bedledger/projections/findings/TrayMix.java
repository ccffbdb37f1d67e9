package bedledger.projections.findings;

import bedledger.language.LotId;
import bedledger.language.Planting;
import bedledger.language.Stock;
import bedledger.language.TrayId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What trays are filled with is on record, and holds no raw manure: 7 CFR 205.201(a)(2), 205.203(c). */
record TrayMix(RuleSheet sheet, Figures figures) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        List<Finding> findings = new ArrayList<>();
        Yearly.of(inquiry.done(Planting.TraysSown.class), Done::day)
                .forEach((year, sown) -> findings.add(sown(inquiry, year, sown)));
        inquiry.done(Planting.TraysPottedUp.class).stream()
                .filter(potted -> potted.fact().pottingMix() == null)
                .forEach(potted -> findings.add(potted(inquiry, potted)));
        inquiry.done(Stock.MixMade.class).stream()
                .filter(mix -> mix.fact().pile() != null)
                .forEach(mix -> findings.add(made(inquiry, mix)));
        return findings;
    }

    private Finding sown(Inquiry inquiry, int year, List<Done<Planting.TraysSown>> all) {
        List<Done<Planting.TraysSown>> without =
                all.stream().filter(done -> done.fact().pottingMix() == null).toList();
        List<Done<Planting.TraysSown>> told = without.isEmpty() ? all : without;
        List<TrayId> trays = told.stream().map(done -> done.fact().batch()).toList();
        Draft draft = new Draft(sheet, inquiry, "trays of " + year, told.get(0).day())
                .at(trays)
                .lots(without.isEmpty() ? Set.of() : lots(inquiry, trays))
                .restsOn(told.stream().map(Done::number).toList());
        return without.isEmpty()
                ? draft.says(
                        Outcome.MET, "All " + all.size() + " sowings of trays of " + year + " name the potting mix.")
                : draft.settledBy("List the mix with its approval, and correct the sowings: --potting-mix \"…\".")
                        .says(
                                Outcome.INCOMPLETE,
                                "The potting mix is not recorded in " + without.size() + " of " + all.size()
                                        + " sowings of trays of " + year + ": " + Wording.list(trays) + ".");
    }

    private Finding potted(Inquiry inquiry, Done<Planting.TraysPottedUp> potted) {
        TrayId trays = potted.fact().batch();
        return new Draft(sheet, inquiry, "trays " + trays + " potted up", potted.day())
                .at(List.of(trays))
                .lots(lots(inquiry, List.of(trays)))
                .restsOn(potted.entry())
                .settledBy("List the mix with its approval, and correct the entry: --potting-mix \"…\".")
                .says(
                        Outcome.INCOMPLETE,
                        "Trays " + trays + " were potted up on " + potted.day()
                                + ", and the potting mix is not recorded.");
    }

    private static Set<LotId> lots(Inquiry inquiry, List<TrayId> trays) {
        Set<LotId> lots = new LinkedHashSet<>();
        trays.stream()
                .flatMap(batch -> inquiry.done(batch, Planting.Transplanted.class).stream())
                .forEach(set -> lots.addAll(inquiry.growing().lotsFrom(set.number())));
        return lots;
    }

    private Finding made(Inquiry inquiry, Done<Stock.MixMade> mix) {
        PileLog log =
                PileLog.of(inquiry, java.util.Objects.requireNonNull(mix.fact().pile()), mix.day());
        boolean plants = Ingredients.of(log.built()) == Ingredients.PLANT;
        Outcome process =
                plants ? Outcome.MET : NopProcess.judge(inquiry, figures, log).outcome();
        // Raw manure in a pot is not named by the rule, and no harvest is near; so never worse than a question.
        Outcome outcome = process == Outcome.MET ? Outcome.MET : Outcome.ASK;
        List<TrayId> trays = since(inquiry, mix);
        String grown = trays.isEmpty()
                ? ""
                : " Sown or potted in it since: "
                        + trays.stream().map(TrayId::toString).collect(Collectors.joining(", ")) + ".";
        return new Draft(sheet, inquiry, "mix " + mix.fact().mix(), mix.day())
                .at(mix.fact().mix())
                .at(log.pile())
                .at(trays)
                .restsOn(mix.entry())
                .restsOn(log.entries())
                .settledBy(
                        outcome == Outcome.MET
                                ? ""
                                : "Ask the certifier whether compost of that pile may go into a mix.")
                .says(
                        outcome,
                        "Mix " + mix.fact().mix() + " of " + mix.day() + " holds compost of pile " + log.pile()
                                + (outcome == Outcome.MET
                                        ? ", of which nothing more is asked."
                                        : ", which shows no complete compost process.")
                                + grown);
    }

    private static List<TrayId> since(Inquiry inquiry, Done<Stock.MixMade> mix) {
        Stream<TrayId> sown = inquiry.done(Planting.TraysSown.class).stream()
                .filter(done -> mix.fact().mix().equals(done.fact().pottingMix())
                        && !done.day().isBefore(mix.day()))
                .map(done -> done.fact().batch());
        Stream<TrayId> potted = inquiry.done(Planting.TraysPottedUp.class).stream()
                .filter(done -> mix.fact().mix().equals(done.fact().pottingMix())
                        && !done.day().isBefore(mix.day()))
                .map(done -> done.fact().batch());
        return Stream.concat(sown, potted).distinct().toList();
    }
}

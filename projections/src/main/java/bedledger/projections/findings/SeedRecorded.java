package bedledger.projections.findings;

import bedledger.language.Land;
import bedledger.language.LotId;
import bedledger.language.SeedLotId;
import bedledger.language.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every sowing and planting leads back to a receipt of its seed: 7 CFR 205.204(a), 205.103(b)(2). */
record SeedRecorded(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Set<SeedLotId> received = inquiry.done(Stock.SeedReceived.class).stream()
                .map(done -> done.fact().seedLot())
                .collect(Collectors.toSet());
        Map<SeedLotId, List<SeedUse>> unknown = new TreeMap<>(Wording.NATURAL);
        List<Finding> findings = new ArrayList<>();
        SeedUse.all(inquiry).forEach(use -> {
            SeedLotId lot = use.seedLot();
            if (lot == null && !use.bought()) {
                findings.add(noLot(inquiry, use));
            } else if (lot != null && !received.contains(lot)) {
                unknown.computeIfAbsent(lot, l -> new ArrayList<>()).add(use);
            }
        });
        unknown.forEach((lot, uses) -> findings.add(noReceipt(inquiry, lot, uses)));
        return Stream.concat(findings.stream(), found(inquiry)).toList();
    }

    private Finding noLot(Inquiry inquiry, SeedUse use) {
        Set<LotId> lots = SeedUse.lots(inquiry, List.of(use));
        String beds = Wording.list(use.beds());
        return new Draft(sheet, inquiry, beds + " " + use.crop(), use.done().day())
                .at(use.beds())
                .lots(lots)
                .restsOn(use.done().entry())
                .settledBy("Correct the entry and name the seed lot: --seed-lot LOT.")
                .says(
                        Outcome.INCOMPLETE,
                        Wording.capital(use.crop().name()) + " in " + beds + " on "
                                + use.done().day() + ": no seed lot is recorded"
                                + (use.cover() ? "." : "; " + Wording.lots(lots) + "."));
    }

    private Finding noReceipt(Inquiry inquiry, SeedLotId lot, List<SeedUse> uses) {
        Set<LotId> lots = SeedUse.lots(inquiry, uses);
        return new Draft(sheet, inquiry, "seed lot " + lot, uses.get(0).done().day())
                .at(lot)
                .at(uses.stream().flatMap(use -> use.beds().stream()).toList())
                .lots(lots)
                .restsOn(uses.stream().map(use -> use.done().number()).toList())
                .settledBy(
                        "Enter its receipt: did receive-seed " + lot + " --crop CROP --quantity AMOUNT --organic yes.")
                .says(
                        Outcome.INCOMPLETE,
                        "Seed lot " + lot + " was planted, but its receipt is not in the book; " + Wording.lots(lots)
                                + ".");
    }

    /** A crop found standing counts once something is harvested from it. */
    private Stream<Finding> found(Inquiry inquiry) {
        return inquiry.done(Land.Found.class).stream()
                .filter(found -> !inquiry.growing().lotsFrom(found.number()).isEmpty())
                .map(found -> new Draft(
                                sheet,
                                inquiry,
                                Wording.list(found.fact().beds()) + " "
                                        + found.fact().crop(),
                                found.day())
                        .at(found.fact().beds())
                        .lots(inquiry.growing().lotsFrom(found.number()))
                        .restsOn(found.entry())
                        .settledBy("Show the certifier the seed records from before the book began.")
                        .says(
                                Outcome.INCOMPLETE,
                                "The " + found.fact().crop() + " found in "
                                        + Wording.list(found.fact().beds()) + " on "
                                        + found.day() + ": nothing in this book shows what it was grown from; "
                                        + Wording.lots(inquiry.growing().lotsFrom(found.number())) + "."));
    }
}

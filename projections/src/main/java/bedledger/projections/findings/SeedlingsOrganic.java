package bedledger.projections.findings;

import bedledger.language.LotId;
import bedledger.language.Planting;
import bedledger.language.SeedLotId;
import bedledger.language.Stock;
import bedledger.language.StockForm;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Bought annual seedlings are organic, or there is a temporary variance: 7 CFR 205.204(a)(3), 205.290. */
record SeedlingsOrganic(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<SeedLotId, Done<Stock.SeedReceived>> receipts = new HashMap<>();
        inquiry.done(Stock.SeedReceived.class)
                .forEach(done -> receipts.put(done.fact().seedLot(), done));
        List<Finding> findings = new ArrayList<>();
        inquiry.done(Stock.SeedReceived.class).stream()
                .filter(done -> done.fact().form() == StockForm.SEEDLINGS)
                .forEach(done -> findings.add(received(inquiry, done)));
        SeedUse.all(inquiry)
                .filter(SeedUse::bought)
                .filter(use -> boughtAsSeedlings(use, receipts))
                .forEach(use -> findings.add(planted(inquiry, use, receipts)));
        return findings;
    }

    /** Planting stock and seed follow 205.204(a)(1); seedlings received under a lot are judged there, unless the planting says more. */
    private static boolean boughtAsSeedlings(SeedUse use, Map<SeedLotId, Done<Stock.SeedReceived>> receipts) {
        Done<Stock.SeedReceived> receipt = use.seedLot() == null ? null : receipts.get(use.seedLot());
        if (receipt == null || receipt.fact().form() == null) {
            return true;
        }
        return receipt.fact().form() == StockForm.SEEDLINGS && set(use).organic() != null;
    }

    private static Planting.Transplanted set(SeedUse use) {
        return (Planting.Transplanted) use.done().fact();
    }

    private Finding received(Inquiry inquiry, Done<Stock.SeedReceived> received) {
        Stock.SeedReceived seed = received.fact();
        List<SeedUse> uses = SeedUse.ofLot(inquiry, seed.seedLot());
        String variance = uses.stream()
                .filter(use -> use.done().fact() instanceof Planting.Transplanted)
                .map(use -> set(use).variance())
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
        Set<LotId> lots = SeedUse.lots(inquiry, uses);
        Draft draft = new Draft(sheet, inquiry, "seedlings " + seed.seedLot() + ", " + seed.crop(), received.day())
                .at(seed.seedLot())
                .at(uses.stream().flatMap(use -> use.beds().stream()).toList())
                .lots(lots)
                .restsOn(received.entry())
                .restsOn(uses.stream().map(use -> use.done().number()).toList());
        String what = Wording.capital(seed.crop().name()) + " seedlings, lot " + seed.seedLot();
        return judged(draft, what, seed.organic(), CertificateProof.of(inquiry, received), variance, lots);
    }

    private Finding planted(Inquiry inquiry, SeedUse use, Map<SeedLotId, Done<Stock.SeedReceived>> receipts) {
        Planting.Transplanted set = set(use);
        Done<Stock.SeedReceived> receipt = use.seedLot() == null ? null : receipts.get(use.seedLot());
        Boolean organic = set.organic();
        if (organic == null && receipt != null) {
            organic = receipt.fact().organic();
        }
        Set<LotId> lots = SeedUse.lots(inquiry, List.of(use));
        String beds = Wording.list(use.beds());
        Draft draft = new Draft(
                        sheet, inquiry, beds + " " + use.crop(), use.done().day())
                .at(use.beds())
                .lots(lots)
                .restsOn(use.done().entry());
        String what = Wording.capital(use.crop().name()) + " planted in " + beds + " on "
                + use.done().day() + ", bought plants";
        return judged(draft, what, organic, proof(inquiry, receipt), set.variance(), lots);
    }

    /** A planting has nowhere to name a certificate; the receipt has. */
    private static CertificateProof proof(Inquiry inquiry, @Nullable Done<Stock.SeedReceived> receipt) {
        return receipt == null
                ? new CertificateProof(
                        Outcome.INCOMPLETE,
                        "no certificate is recorded",
                        "Enter the plants as they came in, with the certificate: did receive-seed LOT --form seedlings"
                                + " --organic yes --certificate \"…\", and name the lot in the planting: --seed-lot LOT.")
                : CertificateProof.of(inquiry, receipt);
    }

    private static Finding judged(
            Draft draft,
            String what,
            @Nullable Boolean organic,
            CertificateProof proof,
            @Nullable String variance,
            Set<LotId> lots) {
        String from = "; grown from them: " + Wording.lots(lots) + ".";
        if (organic == null) {
            return draft.settledBy("Correct the entry: --organic yes with the certificate, or --organic no.")
                    .says(Outcome.INCOMPLETE, what + ": whether they are certified organic is not recorded" + from);
        }
        if (organic) {
            return draft.settledBy(proof.settles())
                    .says(proof.outcome(), what + ": entered as certified organic; " + proof.words() + from);
        }
        return variance == null
                ? draft.settledBy(
                                "Only a temporary variance would be an exception, and that no organic plants were to be had is"
                                        + " no ground for one; ask the certifier what becomes of the lots.")
                        .says(Outcome.NOT_MET, what + ": not organic, and no temporary variance" + from)
                : draft.settledBy("Show the certifier the variance: " + variance + ".")
                        .says(
                                Outcome.ASK,
                                what + ": not organic, under a temporary variance (" + variance + ")" + from);
    }
}

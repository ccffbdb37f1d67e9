package bedledger.projections.findings;

import bedledger.language.LotId;
import bedledger.language.Stock;
import bedledger.language.StockForm;
import bedledger.language.Treatment;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Organic seed and planting stock, or a search that shows there is none, 7 CFR 205.204(a). */
record SeedOrganic(RuleSheet sheet) implements Rule {
    private record Answer(Outcome outcome, String words, String settles) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Stock.SeedReceived.class).stream()
                .filter(received -> received.fact().form() != StockForm.SEEDLINGS)
                .map(received -> finding(inquiry, received))
                .toList();
    }

    private Finding finding(Inquiry inquiry, Done<Stock.SeedReceived> received) {
        Stock.SeedReceived seed = received.fact();
        List<SeedUse> uses = SeedUse.ofLot(inquiry, seed.seedLot());
        Set<LotId> lots = SeedUse.lots(inquiry, uses);
        Answer answer = answer(inquiry, received);
        String what = seed.form() == StockForm.PLANTING_STOCK ? " planting stock, lot " : " seed, lot ";
        return new Draft(sheet, inquiry, "seed lot " + seed.seedLot() + ", " + seed.crop(), received.day())
                .at(seed.seedLot())
                .at(uses.stream().flatMap(use -> use.beds().stream()).toList())
                .lots(lots)
                .restsOn(received.entry())
                .restsOn(uses.stream().map(use -> use.done().number()).toList())
                .settledBy(answer.settles())
                .says(
                        answer.outcome(),
                        Wording.capital(seed.crop().name()) + what + seed.seedLot() + ": " + answer.words()
                                + forYears(received) + "; grown from it: " + Wording.lots(lots) + ".");
    }

    /** Of stock for perennials the clause bears on the stock itself; that crops may be sold before is the reading of NOP 5029. */
    private static String forYears(Done<Stock.SeedReceived> received) {
        Stock.SeedReceived seed = received.fact();
        boolean stock = seed.form() == StockForm.PLANTING_STOCK && Boolean.TRUE.equals(seed.perennial());
        return stock && Boolean.FALSE.equals(seed.organic())
                ? "; for a perennial: itself it may be sold as organic planting stock only after a year under organic"
                        + " management, from " + received.day().plusYears(1) + " (205.204(a)(4))"
                : "";
    }

    private static Answer answer(Inquiry inquiry, Done<Stock.SeedReceived> received) {
        Stock.SeedReceived seed = received.fact();
        if (seed.organic() == null) {
            return new Answer(
                    Outcome.INCOMPLETE,
                    "whether it is certified organic is not recorded",
                    "Correct the receipt: --organic yes with the certificate, or --organic no.");
        }
        return seed.organic()
                ? organic(CertificateProof.of(inquiry, received))
                : notOrganic(seed.treatment(), seed.suppliersAsked());
    }

    /** The grower's word alone shows nothing. */
    private static Answer organic(CertificateProof proof) {
        return new Answer(proof.outcome(), "entered as certified organic; " + proof.words(), proof.settles());
    }

    private static Answer notOrganic(@Nullable Treatment treatment, @Nullable Integer asked) {
        if (treatment == Treatment.OTHER_TREATMENT) {
            return new Answer(
                    Outcome.NOT_MET,
                    "not organic, and treated with something that is not listed",
                    "Only a treatment that plant health law demands would be an exception (205.204(a)(5)); ask the certifier.");
        }
        if (treatment == null) {
            return new Answer(
                    Outcome.INCOMPLETE,
                    "not organic, and whether it is treated is not recorded",
                    "Correct the receipt: --treatment untreated, listed-treatment or other-treatment.");
        }
        String clause = treatment == Treatment.UNTREATED
                ? "not organic, untreated (205.204(a)(1))"
                : "not organic, treated with a listed substance (205.204(a)(2))";
        return searched(clause, asked);
    }

    private static Answer searched(String clause, @Nullable Integer asked) {
        if (asked == null) {
            return new Answer(
                    Outcome.INCOMPLETE,
                    clause + "; no search for organic seed is recorded",
                    "Correct the receipt with the search that was made: --suppliers-asked NUMBER --search \"who, when, what they"
                            + " said\"; 0 if none was made.");
        }
        return asked == 0
                ? new Answer(
                        Outcome.NOT_MET,
                        clause + "; no search for organic seed was made",
                        "Ask the certifier what becomes of the lots; next time search before buying.")
                : new Answer(
                        Outcome.MET,
                        clause + "; " + asked + (asked == 1 ? " supplier" : " suppliers") + " asked for organic seed",
                        "");
    }
}

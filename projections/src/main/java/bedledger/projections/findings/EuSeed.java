package bedledger.projections.findings;

import bedledger.language.LotId;
import bedledger.language.Origin;
import bedledger.language.Planting;
import bedledger.language.Stock;
import bedledger.language.StockForm;
import bedledger.language.Treatment;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Organic plant reproductive material, or the authority's leave where the database has none: 2018/848 Annex II Part I, 1.8. */
record EuSeed(RuleSheet sheet) implements Rule {
    private record Answer(Outcome outcome, String words, String settles) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Stream<Finding> received =
                inquiry.done(Stock.SeedReceived.class).stream().map(done -> received(inquiry, done));
        Stream<Finding> planted = SeedUse.all(inquiry)
                .filter(use -> use.bought() && use.seedLot() == null)
                .map(use -> planted(inquiry, use));
        return Stream.concat(received, planted).toList();
    }

    private Finding received(Inquiry inquiry, Done<Stock.SeedReceived> done) {
        Stock.SeedReceived seed = done.fact();
        List<SeedUse> uses = SeedUse.ofLot(inquiry, seed.seedLot());
        Set<LotId> lots = SeedUse.lots(inquiry, uses);
        Answer answer = answer(inquiry, done);
        return new Draft(sheet, inquiry, "seed lot " + seed.seedLot() + ", " + seed.crop(), done.day())
                .at(seed.seedLot())
                .at(uses.stream().flatMap(use -> use.beds().stream()).toList())
                .lots(lots)
                .restsOn(done.entry())
                .restsOn(uses.stream().map(use -> use.done().number()).toList())
                .settledBy(answer.settles())
                .says(
                        answer.outcome(),
                        Wording.capital(seed.crop().name()) + ", lot " + seed.seedLot() + ": " + answer.words()
                                + "; grown from it: " + Wording.lots(lots) + ".");
    }

    private static Answer answer(Inquiry inquiry, Done<Stock.SeedReceived> done) {
        Stock.SeedReceived seed = done.fact();
        if (seed.organic() == null) {
            return new Answer(
                    Outcome.INCOMPLETE,
                    "whether it is organic is not recorded",
                    "Correct the receipt: --organic yes with the certificate, or --organic no.");
        }
        if (seed.organic()) {
            CertificateProof proof = CertificateProof.of(inquiry, done);
            return new Answer(proof.outcome(), "entered as organic; " + proof.words(), proof.settles());
        }
        if (seed.treatment() == Treatment.OTHER_TREATMENT) {
            return new Answer(
                    Outcome.NOT_MET,
                    "not organic, and treated with something that is not authorised",
                    "Only a treatment that plant health law prescribes would be an exception (1.8.5.3); ask the control body.");
        }
        return seed.form() == StockForm.SEEDLINGS
                        && !Said.PERENNIAL.in(seed.crop().name())
                ? annualPlants()
                : authorised(seed);
    }

    private static Answer annualPlants() {
        return new Answer(
                Outcome.NOT_MET,
                "plants that are not organic, of a crop that is grown and harvested in one season",
                "For such plants there is no leave to be had (point 1.8.5 as amended by 2022/474); ask the control body what becomes of"
                        + " the lots.");
    }

    private static Answer authorised(Stock.SeedReceived seed) {
        if (Said.AUTHORISED.in(seed.search()) || Said.AUTHORISED.in(seed.certificate())) {
            return new Answer(Outcome.MET, "not organic, with leave to use it, as recorded", "");
        }
        if (Said.NONE.in(seed.search())
                || (seed.search() == null && Integer.valueOf(0).equals(seed.suppliersAsked()))) {
            return new Answer(
                    Outcome.NOT_MET,
                    "not organic, and the database was not asked",
                    "Ask the control body what becomes of the lots; next time look into the database before sowing.");
        }
        return new Answer(
                Said.DATABASE.in(seed.search()) ? Outcome.ASK : Outcome.INCOMPLETE,
                "not organic, and no leave to use it is recorded",
                "Correct the receipt with what the database showed and the leave: --search \"database of …: none; authorised on …\".");
    }

    private Finding planted(Inquiry inquiry, SeedUse use) {
        Planting.Transplanted set = (Planting.Transplanted) use.done().fact();
        Set<LotId> lots = SeedUse.lots(inquiry, List.of(use));
        String what = Wording.capital(use.crop().name()) + " planted in " + Wording.list(use.beds()) + " on "
                + use.done().day() + ", " + (set.origin() == Origin.BOUGHT ? "bought plants" : "plants");
        boolean not = Boolean.FALSE.equals(set.organic())
                && !Said.PERENNIAL.in(use.crop().name());
        return new Draft(
                        sheet,
                        inquiry,
                        Wording.list(use.beds()) + " " + use.crop(),
                        use.done().day())
                .at(use.beds())
                .lots(lots)
                .restsOn(use.done().entry())
                .settledBy(
                        not
                                ? annualPlants().settles()
                                : "Enter the plants as they came in, with the certificate: did receive-seed LOT"
                                        + " --form seedlings --organic yes --certificate \"…\", and name the lot: --seed-lot LOT.")
                .says(
                        not ? Outcome.NOT_MET : Outcome.INCOMPLETE,
                        what + (not ? ": not organic" : ": no certificate is recorded") + "; grown from them: "
                                + Wording.lots(lots) + ".");
    }
}

package bedledger.projections.findings;

import bedledger.language.Fertility;
import bedledger.language.MaterialName;
import bedledger.language.PileId;
import bedledger.language.Stock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was spread that counts as raw manure.
 *
 * @param certain false where the certifier decides whether it does
 * @param because why it counts, as a sentence; empty for what was entered as raw manure
 * @param entries the grounds for it, apart from the spreading
 */
record RawMatter(String words, boolean certain, String because, List<Long> entries) {

    static Optional<RawMatter> of(Inquiry inquiry, Figures figures, Done<Fertility.Spread> spread) {
        Fertility.Spread fact = spread.fact();
        if (fact.manure() != null) {
            String manure = Ingredients.manure(fact.manure()) ? fact.manure() : fact.manure() + " manure";
            return Optional.of(new RawMatter("raw " + manure, true, "", List.of()));
        }
        if (fact.pile() != null) {
            return pile(inquiry, figures, fact.pile(), spread.day());
        }
        return fact.material() == null ? Optional.empty() : material(inquiry, fact.material(), spread.day());
    }

    private static Optional<RawMatter> pile(Inquiry inquiry, Figures figures, PileId pile, LocalDate day) {
        PileLog log = PileLog.of(inquiry, pile, day);
        Ingredients nature = Ingredients.of(log.built());
        Outcome outcome = NopProcess.judge(inquiry, figures, log).outcome();
        boolean bound = nature != Ingredients.PLANT && outcome != Outcome.MET;
        if (!bound || !inquiry.is(Reading.PILE_WITHOUT_PROCESS_COUNTS_AS_RAW)) {
            return Optional.empty();
        }
        String unknown =
                nature == Ingredients.UNKNOWN ? " (whether it holds anything from animals is not recorded)" : "";
        String because = outcome == Outcome.ASK
                ? "Whether pile " + pile + " went through a compost process is for the certifier" + unknown + "."
                : "Pile " + pile + " shows no complete compost process" + unknown
                        + ", so it counts as raw manure unless the certifier accepts its process.";
        return Optional.of(new RawMatter("compost of pile " + pile, outcome != Outcome.ASK, because, log.entries()));
    }

    /** Dried, aged or pelleted manure is raw unless its processing is documented (NOP 5006), which an approval on file stands for. */
    private static Optional<RawMatter> material(Inquiry inquiry, MaterialName material, LocalDate day) {
        List<Done<Stock.MaterialListed>> listed = inquiry.done(material, Stock.MaterialListed.class).stream()
                .filter(done -> !done.day().isAfter(day))
                .toList();
        List<String> texts = new ArrayList<>(List.of(material.name()));
        listed.forEach(done -> Optional.ofNullable(done.fact().composition()).ifPresent(texts::add));
        boolean manure = texts.stream().anyMatch(Ingredients::manure);
        boolean approved = listed.stream().anyMatch(done -> done.fact().approval() != null);
        return manure && !approved
                ? Optional.of(new RawMatter(
                        material.name(),
                        false,
                        "Nothing on file shows that this manure was processed (NOP 5006).",
                        listed.stream().map(Done::number).toList()))
                : Optional.empty();
    }
}

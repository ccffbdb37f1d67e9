package bedledger.projections.findings;

import bedledger.language.MaterialName;
import bedledger.language.Stock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Bought compost: the supplier's papers on its treatment, not older than a year: 21 CFR 112.60(b)(1). */
record FdaSupplier(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return MaterialUse.byMaterial(inquiry).entrySet().stream()
                .filter(uses -> bought(inquiry, uses.getKey()))
                .map(uses -> finding(inquiry, uses.getKey(), uses.getValue()))
                .toList();
    }

    /** Compost that holds something from animals, or is not said to hold none. */
    private static boolean bought(Inquiry inquiry, MaterialName material) {
        List<String> texts = inquiry.texts(material);
        return texts.stream().anyMatch(Said.COMPOST::in)
                && texts.stream().anyMatch(Ingredients::animal)
                && !ofOwnCompost(inquiry, material);
    }

    /** A mix made here of a pile, or of bought compost: pile and compost are judged themselves. */
    private static boolean ofOwnCompost(Inquiry inquiry, MaterialName material) {
        List<Done<Stock.MixMade>> made = made(inquiry, material);
        return !made.isEmpty()
                && made.stream()
                        .allMatch(mix -> mix.fact().pile() != null
                                || mix.fact().materials().stream()
                                        .flatMap(part -> inquiry.texts(part).stream())
                                        .anyMatch(Said.COMPOST::in));
    }

    private static List<Done<Stock.MixMade>> made(Inquiry inquiry, MaterialName material) {
        return inquiry.done(material, Stock.MixMade.class).stream()
                .filter(mix -> mix.fact().mix().equals(material))
                .toList();
    }

    private Finding finding(Inquiry inquiry, MaterialName material, List<MaterialUse> uses) {
        MaterialUse last =
                uses.stream().max(Comparator.comparing(MaterialUse::day)).orElseThrow();
        List<Done<Stock.MaterialListed>> listed = inquiry.done(material, Stock.MaterialListed.class);
        Optional<LocalDate> paper = listed.stream()
                .filter(done -> done.fact().approval() != null)
                .map(Done::day)
                .filter(day -> !day.isAfter(last.day()))
                .max(Comparator.naturalOrder());
        Draft draft = new Draft(sheet, inquiry, material.name(), last.day())
                .at(material)
                .at(MaterialUse.beds(uses))
                .restsOn(Stream.concat(
                                uses.stream().map(MaterialUse::number),
                                listed.stream().map(Done::number))
                        .toList());
        List<Done<Stock.MixMade>> made = made(inquiry, material);
        if (!made.isEmpty()) {
            return draft.restsOn(made.stream().map(Done::number).toList())
                    .settledBy(
                            "Correct the making of it with --pile, or with the bought compost among its --materials.")
                    .says(
                            Outcome.INCOMPLETE,
                            material
                                    + ", made here, is said to hold compost: from which pile or supplier is not recorded.");
        }
        boolean fresh = paper.isPresent() && !paper.get().plusYears(1).isBefore(last.day());
        if (paper.isPresent()) {
            draft.counting(last.day() + " is " + (fresh ? "within" : "beyond") + " a year of " + paper.get());
        }
        return fresh
                ? draft.says(
                        Outcome.MET,
                        material + ", last used on " + last.day() + ": papers on file since " + paper.get() + ".")
                : draft.settledBy(
                                "Ask the supplier every year for the papers on process and clean handling, and list the material again"
                                        + " with --approval \"supplier's statement, folder …\".")
                        .says(
                                Outcome.INCOMPLETE,
                                material + ", last used on " + last.day() + ": "
                                        + (paper.isEmpty()
                                                ? "no papers on its treatment are on record."
                                                : "the papers on record are of " + paper.get()
                                                        + ", older than a year."));
    }
}

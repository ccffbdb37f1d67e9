package bedledger.projections.findings;

import bedledger.language.BadValue;
import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.Fertility;
import bedledger.language.LotId;
import bedledger.language.MaterialName;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Substances that the book leaves out, natural or not: 7 CFR 205.602, 205.105; in the EU book, points 1.9.8 and Article 24. */
record ProhibitedInput(RuleSheet sheet, Figures figures, List<Prohibited> list) implements Rule {
    private record Hit(MaterialUse use, Prohibited prohibited) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<String, List<Hit>> together = new LinkedHashMap<>();
        hits(inquiry)
                .forEach(hit -> together.computeIfAbsent(
                                hit.use().material() + " " + hit.prohibited().citation(), key -> new ArrayList<>())
                        .add(hit));
        if (together.isEmpty()) {
            return List.of();
        }
        Map<Long, Set<LotId>> lots = MaterialUse.lots(inquiry, figures.whole("land.years"));
        return together.values().stream()
                .map(all -> finding(inquiry, all, lots))
                .toList();
    }

    private Stream<Hit> hits(Inquiry inquiry) {
        return Stream.concat(MaterialUse.all(inquiry), manures(inquiry))
                .flatMap(use -> list.stream()
                        .filter(one -> one.inForceOn(use.day()))
                        .filter(one -> inquiry.texts(use.material()).stream().anyMatch(one::isNamedIn))
                        .map(one -> new Hit(use, one)));
    }

    /** Ash may be entered as what it was made of. */
    private static Stream<MaterialUse> manures(Inquiry inquiry) {
        return inquiry.done(Fertility.Spread.class).stream()
                .flatMap(done -> named(done.fact().manure()).stream()
                        .map(manure -> new MaterialUse(done, manure, done.fact().beds())));
    }

    private static Optional<MaterialName> named(@Nullable String manure) {
        try {
            return Optional.ofNullable(manure).map(MaterialName::new);
        } catch (BadValue noName) {
            return Optional.empty();
        }
    }

    private Finding finding(Inquiry inquiry, List<Hit> all, Map<Long, Set<LotId>> lots) {
        Prohibited prohibited = all.get(0).prohibited();
        List<MaterialUse> uses = all.stream().map(Hit::use).toList();
        MaterialName material = uses.get(0).material();
        List<BedId> beds = MaterialUse.beds(uses);
        String where = beds.isEmpty() ? "" : " on " + Wording.list(beds);
        return new Draft(
                        sheet, inquiry, material.name(), MaterialUse.first(uses).day())
                .at(material)
                .at(beds)
                .lots(uses.stream()
                        .flatMap(use -> lots.getOrDefault(use.number(), Set.of()).stream())
                        .toList())
                .restsOn(MaterialUse.numbers(uses))
                .citing(prohibited.citation())
                .settledBy(
                        prohibited.outcome() == Outcome.NOT_MET
                                ? "Tell the certifier now; they say what becomes of the land and the lots. If the name is mistaken,"
                                        + " correct the entry or the listing."
                                : "Show the certifier how and why it was used, and keep the answer on file.")
                .says(
                        prohibited.outcome(),
                        material + ", used" + where + " from "
                                + MaterialUse.first(uses).day() + ", names " + prohibited.name() + ": "
                                + prohibited.says() + ".");
    }

    @Override
    public List<Wait> waits(Inquiry inquiry, BedId bed, CropName crop) {
        int years = figures.whole("land.years");
        return hits(inquiry)
                .filter(hit -> hit.prohibited().outcome() == Outcome.NOT_MET
                        && hit.use().beds().contains(bed))
                .map(hit -> {
                    LocalDate from = hit.use().day().plusYears(years);
                    return new Wait(
                            sheet.id(),
                            from,
                            hit.use().material() + " on " + bed + " on "
                                    + hit.use().day() + " names "
                                    + hit.prohibited().name()
                                    + ", which is left out; unless the certifier says otherwise, no"
                                    + " organic harvest before " + from + ".",
                            List.of(hit.use().number()),
                            hit.prohibited().citation());
                })
                .toList();
    }
}

package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.LotId;
import bedledger.language.MaterialName;
import bedledger.language.Stock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Every input is listed, with its approval, before it is used: 7 CFR 205.201(a)(2). Lots are named where that is open. */
record MaterialListed(RuleSheet sheet, Figures figures) implements Rule {

    private enum Listing {
        APPROVED,
        NOT_APPROVED,
        NONE
    }

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        // For as long as a prohibited substance would bar the land.
        Map<Long, Set<LotId>> lots = MaterialUse.lots(inquiry, figures.whole("land.years"));
        return MaterialUse.byMaterial(inquiry).entrySet().stream()
                .flatMap(material -> findings(inquiry, material.getKey(), material.getValue(), lots))
                .toList();
    }

    private Stream<Finding> findings(
            Inquiry inquiry, MaterialName material, List<MaterialUse> uses, Map<Long, Set<LotId>> lots) {
        List<Done<Stock.MaterialListed>> listings = inquiry.done(material, Stock.MaterialListed.class);
        Map<Listing, List<MaterialUse>> byListing = new TreeMap<>();
        uses.forEach(use -> byListing
                .computeIfAbsent(listing(listings, use.done().day()), l -> new ArrayList<>())
                .add(use));
        return byListing.entrySet().stream()
                .map(same -> finding(inquiry, material, same.getKey(), same.getValue(), listings, lots));
    }

    private static Listing listing(List<Done<Stock.MaterialListed>> listings, LocalDate day) {
        List<Done<Stock.MaterialListed>> before =
                listings.stream().filter(done -> !done.day().isAfter(day)).toList();
        if (before.isEmpty()) {
            return Listing.NONE;
        }
        return before.stream().anyMatch(done -> done.fact().approval() != null)
                ? Listing.APPROVED
                : Listing.NOT_APPROVED;
    }

    private Finding finding(
            Inquiry inquiry,
            MaterialName material,
            Listing listing,
            List<MaterialUse> uses,
            List<Done<Stock.MaterialListed>> listings,
            Map<Long, Set<LotId>> lots) {
        MaterialUse first = MaterialUse.first(uses);
        List<BedId> beds =
                Wording.sorted(uses.stream().flatMap(use -> use.beds().stream()).toList());
        Function<MaterialUse, Stream<LotId>> picked =
                use -> lots.getOrDefault(use.done().number(), Set.of()).stream();
        String used = material + ", used" + (beds.isEmpty() ? "" : " on " + Wording.list(beds)) + " from "
                + first.done().day() + ": ";
        Draft draft = new Draft(sheet, inquiry, material.name(), first.done().day())
                .at(material)
                .at(beds)
                .lots(
                        listing == Listing.APPROVED
                                ? List.of()
                                : uses.stream().flatMap(picked).toList())
                .restsOn(uses.stream().map(use -> use.done().number()).toList())
                .restsOn(listings.stream().map(Done::number).toList());
        return switch (listing) {
            case APPROVED -> draft.says(Outcome.MET, used + "listed and approved before it was used.");
            case NOT_APPROVED ->
                draft.settledBy("Correct the listing and say who approved it, when, and where the proof is kept:"
                                + " --approval \"…\".")
                        .says(
                                Outcome.INCOMPLETE,
                                used + "listed, but no approval is recorded" + later(listings, first) + ".");
            case NONE ->
                draft.settledBy(
                                "Enter it with its maker, make-up and approval: did list-material \"" + material
                                        + "\" --approval \"…\" --on DATE, or correct the listing's day if it was approved by then.")
                        .says(
                                Outcome.INCOMPLETE,
                                used + "it was not listed by that day" + later(listings, first) + ".");
        };
    }

    private static String later(List<Done<Stock.MaterialListed>> listings, MaterialUse first) {
        @Nullable
        LocalDate later = listings.stream()
                .map(Done::day)
                .filter(day -> day.isAfter(first.done().day()))
                .min(Comparator.naturalOrder())
                .orElse(null);
        return later == null ? "" : "; a listing follows on " + later;
    }
}

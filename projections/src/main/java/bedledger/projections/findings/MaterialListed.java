package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.Care;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import bedledger.language.Harvesting;
import bedledger.language.LotId;
import bedledger.language.MaterialName;
import bedledger.language.Planting;
import bedledger.language.Stock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Every input is listed, with its approval, before it is used: 7 CFR 205.201(a)(2). Lots are named where that is open. */
record MaterialListed(RuleSheet sheet, Figures figures) implements Rule {

    /** One use of an input. */
    private record Use(Done<?> done, MaterialName material, List<BedId> beds) {}

    private enum Listing {
        APPROVED,
        NOT_APPROVED,
        NONE
    }

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<MaterialName, List<Use>> uses = new TreeMap<>(Wording.NATURAL);
        uses(inquiry)
                .forEach(use -> uses.computeIfAbsent(use.material(), m -> new ArrayList<>())
                        .add(use));
        Map<Long, Set<LotId>> lots = pickedAfter(inquiry);
        touchedIndoors(inquiry, lots);
        return uses.entrySet().stream()
                .flatMap(material -> findings(inquiry, material.getKey(), material.getValue(), lots))
                .toList();
    }

    private static Stream<Use> uses(Inquiry inquiry) {
        Stream<Use> spread = inquiry.done(Fertility.Spread.class).stream()
                .flatMap(done -> Optional.ofNullable(done.fact().material()).stream()
                        .map(material -> new Use(done, material, done.fact().beds())));
        Stream<Use> sprayed = inquiry.done(Care.Sprayed.class).stream()
                .map(done -> new Use(done, done.fact().product(), done.fact().beds()));
        return Stream.of(spread, sprayed, indoors(inquiry)).flatMap(uses -> uses);
    }

    /** Potting mixes, what they are made of, and sanitizers. */
    private static Stream<Use> indoors(Inquiry inquiry) {
        Stream<Use> sown = inquiry.done(Planting.TraysSown.class).stream()
                .flatMap(done -> Optional.ofNullable(done.fact().pottingMix()).stream()
                        .map(mix -> new Use(done, mix, List.of())));
        Stream<Use> mixed = inquiry.done(Stock.MixMade.class).stream()
                .flatMap(done -> done.fact().materials().stream().map(part -> new Use(done, part, List.of())));
        Stream<Use> washed = inquiry.done(Harvesting.LotsWashed.class).stream()
                .flatMap(done -> Optional.ofNullable(done.fact().sanitizer()).stream()
                        .map(sanitizer -> new Use(done, sanitizer, List.of())));
        return Stream.of(sown, mixed, washed).flatMap(uses -> uses);
    }

    /** By the use's entry, the lots picked from those beds afterwards, for as long as a prohibited substance would bar the land. */
    private Map<Long, Set<LotId>> pickedAfter(Inquiry inquiry) {
        Map<Long, Set<LotId>> lots = new TreeMap<>();
        for (BedId bed : inquiry.beds()) {
            List<BedStep> uses = new ArrayList<>();
            for (BedStep step : inquiry.steps(bed)) {
                step.as(Harvesting.Harvested.class)
                        .ifPresent(harvest -> uses.stream()
                                .filter(use -> harvest.day().isBefore(use.day().plusYears(figures.whole("land.years"))))
                                .forEach(use -> lots.computeIfAbsent(use.number(), number -> new LinkedHashSet<>())
                                        .add(harvest.fact().lot())));
                if (isUse(step.fact())) {
                    uses.add(step);
                }
            }
        }
        return lots;
    }

    /** The same for what was washed, and for what grew from trays with that mix. */
    private static void touchedIndoors(Inquiry inquiry, Map<Long, Set<LotId>> lots) {
        inquiry.done(Harvesting.LotsWashed.class)
                .forEach(done -> lots.computeIfAbsent(done.number(), number -> new LinkedHashSet<>())
                        .addAll(done.fact().lots()));
        inquiry.done(Planting.TraysSown.class)
                .forEach(done -> inquiry.done(done.fact().batch(), Planting.Transplanted.class)
                        .forEach(set -> lots.computeIfAbsent(done.number(), number -> new LinkedHashSet<>())
                                .addAll(inquiry.growing().lotsFrom(set.number()))));
    }

    private static boolean isUse(Fact fact) {
        return fact instanceof Care.Sprayed || (fact instanceof Fertility.Spread spread && spread.material() != null);
    }

    private Stream<Finding> findings(
            Inquiry inquiry, MaterialName material, List<Use> uses, Map<Long, Set<LotId>> lots) {
        List<Done<Stock.MaterialListed>> listings = inquiry.done(material, Stock.MaterialListed.class);
        Map<Listing, List<Use>> byListing = new TreeMap<>();
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
            List<Use> uses,
            List<Done<Stock.MaterialListed>> listings,
            Map<Long, Set<LotId>> lots) {
        Use first =
                uses.stream().min(Comparator.comparing(use -> use.done().day())).orElseThrow();
        List<BedId> beds =
                Wording.sorted(uses.stream().flatMap(use -> use.beds().stream()).toList());
        Function<Use, Stream<LotId>> picked =
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

    private static String later(List<Done<Stock.MaterialListed>> listings, Use first) {
        @Nullable
        LocalDate later = listings.stream()
                .map(Done::day)
                .filter(day -> day.isAfter(first.done().day()))
                .min(Comparator.naturalOrder())
                .orElse(null);
        return later == null ? "" : "; a listing follows on " + later;
    }
}

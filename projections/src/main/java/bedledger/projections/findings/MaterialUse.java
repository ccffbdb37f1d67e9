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
import bedledger.language.TrayId;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One use of an input that has a name.
 *
 * @param beds none where it was used indoors: in trays, in a mix, in wash water
 */
record MaterialUse(Done<?> done, MaterialName material, List<BedId> beds) {
    LocalDate day() {
        return done.day();
    }

    long number() {
        return done.number();
    }

    static Stream<MaterialUse> all(Inquiry inquiry) {
        Stream<MaterialUse> spread = inquiry.done(Fertility.Spread.class).stream()
                .flatMap(done -> Optional.ofNullable(done.fact().material()).stream()
                        .map(material ->
                                new MaterialUse(done, material, done.fact().beds())));
        Stream<MaterialUse> sprayed = inquiry.done(Care.Sprayed.class).stream()
                .map(done ->
                        new MaterialUse(done, done.fact().product(), done.fact().beds()));
        return Stream.of(spread, sprayed, indoors(inquiry)).flatMap(uses -> uses);
    }

    /** Potting mixes, what they are made of, and sanitizers. */
    private static Stream<MaterialUse> indoors(Inquiry inquiry) {
        Stream<MaterialUse> sown = inquiry.done(Planting.TraysSown.class).stream()
                .flatMap(done -> Optional.ofNullable(done.fact().pottingMix()).stream()
                        .map(mix -> new MaterialUse(done, mix, List.of())));
        Stream<MaterialUse> potted = inquiry.done(Planting.TraysPottedUp.class).stream()
                .flatMap(done -> Optional.ofNullable(done.fact().pottingMix()).stream()
                        .map(mix -> new MaterialUse(done, mix, List.of())));
        Stream<MaterialUse> mixed = inquiry.done(Stock.MixMade.class).stream()
                .flatMap(done -> done.fact().materials().stream().map(part -> new MaterialUse(done, part, List.of())));
        Stream<MaterialUse> washed = inquiry.done(Harvesting.LotsWashed.class).stream()
                .flatMap(done -> Optional.ofNullable(done.fact().sanitizer()).stream()
                        .map(sanitizer -> new MaterialUse(done, sanitizer, List.of())));
        return Stream.of(sown, potted, mixed, washed).flatMap(uses -> uses);
    }

    /** The uses of each input, by its name in natural order. */
    static Map<MaterialName, List<MaterialUse>> byMaterial(Inquiry inquiry) {
        Map<MaterialName, List<MaterialUse>> uses = new TreeMap<>(Wording.NATURAL);
        all(inquiry)
                .forEach(use -> uses.computeIfAbsent(use.material(), m -> new ArrayList<>())
                        .add(use));
        return uses;
    }

    /** By the use's entry: the lots picked from those beds within some years after, what was washed with it, what grew from its trays. */
    static Map<Long, Set<LotId>> lots(Inquiry inquiry, int years) {
        Map<Long, Set<LotId>> lots = inquiry.pickedAfter(MaterialUse::onBeds, years);
        inquiry.done(Harvesting.LotsWashed.class)
                .forEach(done -> lots.computeIfAbsent(done.number(), number -> new LinkedHashSet<>())
                        .addAll(done.fact().lots()));
        inquiry.done(Planting.TraysSown.class)
                .forEach(done -> grown(inquiry, done, done.fact().batch(), lots));
        inquiry.done(Planting.TraysPottedUp.class)
                .forEach(done -> grown(inquiry, done, done.fact().batch(), lots));
        return lots;
    }

    private static void grown(Inquiry inquiry, Done<?> use, TrayId batch, Map<Long, Set<LotId>> lots) {
        inquiry.done(batch, Planting.Transplanted.class)
                .forEach(set -> lots.computeIfAbsent(use.number(), number -> new LinkedHashSet<>())
                        .addAll(inquiry.growing().lotsFrom(set.number())));
    }

    static List<BedId> beds(List<MaterialUse> uses) {
        return Wording.sorted(uses.stream().flatMap(use -> use.beds().stream()).toList());
    }

    static List<Long> numbers(List<MaterialUse> uses) {
        return uses.stream().map(MaterialUse::number).toList();
    }

    static MaterialUse first(List<MaterialUse> uses) {
        return uses.stream()
                .min(java.util.Comparator.comparing(MaterialUse::day))
                .orElseThrow();
    }

    private static boolean onBeds(Fact fact) {
        return fact instanceof Care.Sprayed || (fact instanceof Fertility.Spread spread && spread.material() != null);
    }
}

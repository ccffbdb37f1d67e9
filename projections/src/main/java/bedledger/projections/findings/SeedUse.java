package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.LotId;
import bedledger.language.Origin;
import bedledger.language.Planting;
import bedledger.language.SeedLotId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One sowing or planting, as the seed rules see it. */
record SeedUse(
        Done<?> done,
        List<BedId> beds,
        CropName crop,
        @Nullable SeedLotId seedLot,
        boolean cover,
        boolean bought) {

    /** Every sowing, planting and cover crop, in the order of the work. */
    static Stream<SeedUse> all(Inquiry inquiry) {
        return inquiry.done(Planting.class).stream().flatMap(done -> of(inquiry, done));
    }

    private static Stream<SeedUse> of(Inquiry inquiry, Done<Planting> done) {
        Planting fact = done.fact();
        if (fact instanceof Planting.Sown sown) {
            return Stream.of(new SeedUse(done, sown.beds(), sown.crop(), sown.seedLot(), false, false));
        }
        if (fact instanceof Planting.CoverSown sown) {
            return Stream.of(new SeedUse(done, sown.beds(), sown.crop(), sown.seedLot(), true, false));
        }
        return fact instanceof Planting.Transplanted set
                ? seeds(inquiry, set).stream()
                        .map(seed -> new SeedUse(
                                done, set.beds(), set.crop(), seed.orElse(null), false, set.origin() == Origin.BOUGHT))
                : Stream.empty();
    }

    /** What was sown or planted of a seed lot, be it by way of trays. */
    static List<SeedUse> ofLot(Inquiry inquiry, SeedLotId lot) {
        return inquiry.done(lot, Planting.class).stream()
                .flatMap(done -> done.fact() instanceof Planting.TraysSown trays
                        ? inquiry.done(trays.batch(), Planting.class).stream()
                        : Stream.of(done))
                .distinct()
                .flatMap(done -> of(inquiry, done))
                .toList();
    }

    /** The seed lot named, or those of the trays; an empty one where neither is recorded. */
    private static List<Optional<SeedLotId>> seeds(Inquiry inquiry, Planting.Transplanted set) {
        List<Optional<SeedLotId>> ofTrays = set.trays().stream()
                .flatMap(trays -> inquiry.done(trays, Planting.TraysSown.class).stream())
                .map(sown -> Optional.ofNullable(sown.fact().seedLot()))
                .distinct()
                .toList();
        return set.seedLot() != null || ofTrays.isEmpty() ? List.of(Optional.ofNullable(set.seedLot())) : ofTrays;
    }

    static Set<LotId> lots(Inquiry inquiry, List<SeedUse> uses) {
        Set<LotId> lots = new LinkedHashSet<>();
        uses.forEach(use -> lots.addAll(inquiry.growing().lotsFrom(use.done().number())));
        return lots;
    }
}

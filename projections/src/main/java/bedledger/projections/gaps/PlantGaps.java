package bedledger.projections.gaps;

import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Origin;
import bedledger.language.Planting;
import bedledger.projections.gaps.Gap.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Sowings without an amount, own plants without trays, trays without a potting mix, bought plants without a supplier. */
final class PlantGaps {
    static Stream<Gap> of(Looked looked) {
        return looked.done(Planting.class).stream().flatMap(entry -> of(entry).stream());
    }

    private static List<Gap> of(Entry entry) {
        if (entry.fact() instanceof Planting.Sown sown) {
            return sown.quantity() == null && sown.perBed() == null
                    ? List.of(amount(entry, sown.crop(), sown.beds()))
                    : List.of();
        }
        if (entry.fact() instanceof Planting.CoverSown sown) {
            return sown.quantity() == null && sown.perBed() == null
                    ? List.of(amount(entry, sown.crop(), sown.beds()))
                    : List.of();
        }
        if (entry.fact() instanceof Planting.TraysSown trays) {
            return trays(entry, trays);
        }
        return entry.fact() instanceof Planting.Transplanted set ? set(entry, set) : List.of();
    }

    private static Gap amount(Entry entry, CropName crop, List<BedId> beds) {
        return gap(
                entry, crop, "in " + Looked.list(beds), "How much seed was sown is not recorded.", "--quantity AMOUNT");
    }

    private static List<Gap> trays(Entry entry, Planting.TraysSown trays) {
        List<Gap> gaps = new ArrayList<>();
        String where = "trays " + trays.batch();
        if (trays.pottingMix() == null) {
            gaps.add(gap(entry, trays.crop(), where, "The potting mix is not recorded.", "--potting-mix \"MATERIAL\""));
        }
        if (trays.quantity() == null && (trays.trays() == null || trays.cells() == null)) {
            gaps.add(gap(
                    entry, trays.crop(), where, "How much was sown is not recorded.", "--trays NUMBER --cells NUMBER"));
        }
        return gaps;
    }

    private static List<Gap> set(Entry entry, Planting.Transplanted set) {
        List<Gap> gaps = new ArrayList<>();
        String where = "in " + Looked.list(set.beds());
        if (set.origin() == null) {
            gaps.add(gap(
                    entry, set.crop(), where, "Whether the plants are own or bought is not recorded.", "--origin own"));
        }
        if (set.plants() == null) {
            gaps.add(gap(entry, set.crop(), where, "How many plants were set out is not recorded.", "--plants NUMBER"));
        }
        if (set.origin() == Origin.BOUGHT && set.supplier() == null && set.seedLot() == null) {
            gaps.add(gap(entry, set.crop(), where, "Who sold the plants is not recorded.", "--supplier \"NAME\""));
        }
        if (set.origin() == Origin.OWN && set.trays().isEmpty()) {
            gaps.add(new Gap(
                    Topic.SEED,
                    set.crop() + " " + where,
                    "Own plants: when they were sown, and in which potting mix, is not recorded.",
                    "did sow-trays TRAYS --crop " + Looked.typed(set.crop())
                            + (set.seedLot() == null ? "" : " --seed-lot " + set.seedLot())
                            + " --potting-mix \"MATERIAL\" --on DATE; then " + Looked.correct(entry, "--trays TRAYS"),
                    List.of(entry.number())));
        }
        return gaps;
    }

    private static Gap gap(Entry entry, CropName crop, String where, String says, String what) {
        return new Gap(Topic.SEED, crop + " " + where, says, Looked.correct(entry, what), List.of(entry.number()));
    }

    private PlantGaps() {}
}

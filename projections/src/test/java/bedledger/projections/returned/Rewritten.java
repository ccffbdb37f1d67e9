package bedledger.projections.returned;

import bedledger.language.Amount;
import bedledger.language.BedWork.ResidueHauledOff;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting.Harvested;
import bedledger.language.Planting.Transplanted;
import java.util.List;

/** The same book, every vegetable in it one that no table knows, or harvested by the head and not by weight. */
record Rewritten(String name) {
    /** The same book, no harvest in it weighed. */
    static List<Entry> countedInHeads(List<Entry> entries) {
        return entries.stream()
                .map(entry -> entry.fact() instanceof Harvested cut
                        ? with(
                                entry,
                                new Harvested(
                                        cut.beds(),
                                        cut.crop(),
                                        Amount.parse("30heads"),
                                        cut.lot(),
                                        cut.weighed(),
                                        cut.last(),
                                        null))
                        : entry)
                .toList();
    }

    List<Entry> in(List<Entry> entries) {
        return entries.stream().map(entry -> with(entry, fact(entry.fact()))).toList();
    }

    private static Entry with(Entry entry, Fact fact) {
        return new Entry(
                entry.number(),
                entry.act(),
                entry.sequence(),
                entry.writtenAt(),
                entry.writtenBy(),
                entry.head(),
                fact);
    }

    private Fact fact(Fact fact) {
        CropName crop = new CropName(name);
        if (fact instanceof Transplanted set) {
            return new Transplanted(
                    set.beds(),
                    crop,
                    set.origin(),
                    set.seedLot(),
                    set.trays(),
                    set.organic(),
                    set.variance(),
                    set.supplier(),
                    set.plants(),
                    set.variety(),
                    set.rows());
        }
        if (fact instanceof Harvested cut) {
            return new Harvested(cut.beds(), crop, cut.quantity(), cut.lot(), cut.weighed(), cut.last(), cut.each());
        }
        if (fact instanceof ResidueHauledOff haul) {
            return new ResidueHauledOff(
                    haul.beds(), crop, haul.weight(), haul.share(), haul.dry(), haul.roots(), haul.to());
        }
        return fact;
    }
}

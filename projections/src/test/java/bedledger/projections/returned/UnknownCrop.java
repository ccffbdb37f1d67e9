package bedledger.projections.returned;

import bedledger.language.BedWork.ResidueHauledOff;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting.Harvested;
import bedledger.language.Planting.Transplanted;
import java.util.List;

/** The same book, every vegetable in it one that no table knows. */
record UnknownCrop(String name) {
    List<Entry> in(List<Entry> entries) {
        return entries.stream()
                .map(entry -> new Entry(
                        entry.number(),
                        entry.act(),
                        entry.sequence(),
                        entry.writtenAt(),
                        entry.writtenBy(),
                        entry.head(),
                        fact(entry.fact())))
                .toList();
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

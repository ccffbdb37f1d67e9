package bedledger.projections.returned;

import bedledger.language.Entry;
import bedledger.language.Head;
import bedledger.projections.history.BedAreas;
import bedledger.projections.history.Cropping;
import java.util.ArrayList;
import java.util.List;

/**
 * Croppings that are estimated together: harvested together, ended on one day, with the same hauls, on the same evidence.
 *
 * @param cases one for each bed
 */
record CropGroup(Basis basis, List<CropCase> cases, Evidence evidence) {
    Cropping first() {
        return cases.get(0).cropping;
    }

    String crop() {
        return basis.plain(first().crop());
    }

    boolean cover() {
        return first().cover();
    }

    double squareMetres() {
        return cases.stream().mapToDouble(each -> each.cropping.squareMetres()).sum();
    }

    Entry end() {
        return first().end().orElseThrow();
    }

    List<Entry> hauls() {
        return cases.get(0).haulsToSubtract();
    }

    /** The part of what an entry says of several beds that falls on these. */
    double part(Entry entry) {
        return cases.stream()
                .mapToDouble(each -> basis.areas.share(entry, each.cropping.bed()))
                .sum();
    }

    /** The area on which the crop grew, where less than the beds was planted. */
    double plantedSquareMetres(Working working) {
        return cases.stream()
                .mapToDouble(each -> planted(each.cropping, working))
                .sum();
    }

    private double planted(Cropping cropping, Working working) {
        Entry planting = cropping.plantings().get(0);
        Head head = planting.head();
        double beds = basis.areas.squareMetres(planting);
        if (head.area() == null || beds <= 0 || !BedAreas.beds(planting).contains(cropping.bed())) {
            return cropping.squareMetres();
        }
        double planted = head.area().squareMetres();
        String said = "#" + planting.number() + " was planted on " + head.area() + ", its beds have "
                + Numbers.two(beds) + " m²: ";
        if (planted > beds) {
            working.remark(said + "only the bed tops are counted");
            return cropping.squareMetres();
        }
        if (planted < beds) {
            working.remark(said + "the figure stands for the part that was planted");
        }
        return cropping.squareMetres() * planted / beds;
    }

    /** Each bed's share: by its own harvest where that is the evidence, else by area. */
    List<BedShare> shares(List<Weighing> weighings) {
        double harvested = weighings.stream().mapToDouble(Weighing::kilograms).sum();
        boolean byHarvest = evidence == Evidence.FROM_YIELD && harvested > 0;
        double area = squareMetres();
        List<BedShare> shares = new ArrayList<>();
        for (int at = 0; at < cases.size(); at++) {
            Cropping cropping = cases.get(at).cropping;
            double byArea = area > 0 ? cropping.squareMetres() / area : 1.0 / cases.size();
            boolean shared = cases.size() > 1 || (byHarvest && weighings.get(at).sharedByArea());
            shares.add(new BedShare(
                    cropping.bed(),
                    cropping.squareMetres(),
                    byHarvest ? weighings.get(at).kilograms() / harvested : byArea,
                    shared));
        }
        return shares;
    }
}

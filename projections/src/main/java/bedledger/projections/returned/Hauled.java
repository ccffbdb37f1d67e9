package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.projections.estimate.Estimate;
import java.util.List;
import java.util.Optional;

/**
 * What was carted off of the shoots of one or several croppings.
 *
 * @param what the crop
 * @param beds the beds it was taken from, each with its share, by area
 * @param dry kg dry, all beds together; empty where it cannot be worked out
 */
public record Hauled(Entry entry, String what, List<BedShare> beds, Optional<Estimate> dry) {
    public Hauled {
        beds = List.copyOf(beds);
        dry = dry.map(each -> each.behind(List.of(entry.number())));
    }

    static Hauled of(CropGroup group, Entry entry, Optional<Estimate> dry) {
        double area = group.squareMetres();
        List<BedShare> shares = group.cases().stream()
                .map(each -> each.cropping)
                .map(each -> new BedShare(
                        each.bed(),
                        each.squareMetres(),
                        area > 0
                                ? each.squareMetres() / area
                                : 1.0 / group.cases().size(),
                        group.cases().size() > 1))
                .toList();
        return new Hauled(entry, group.crop(), shares, dry);
    }

    /** What was taken from one bed; empty where it is not known. */
    public Optional<Estimate> from(BedId bed) {
        return beds.stream()
                .filter(share -> share.bed().equals(bed))
                .findFirst()
                .flatMap(share -> dry.map(each -> each.times(share.share())));
    }
}

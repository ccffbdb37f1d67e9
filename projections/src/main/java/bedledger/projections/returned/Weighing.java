package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.language.Dimension;
import bedledger.language.Entry;
import bedledger.language.Harvesting.Harvested;
import bedledger.language.Mass;
import bedledger.language.Weighed;
import bedledger.projections.history.BedAreas;
import bedledger.projections.history.Cropping;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What was harvested of one cropping in one bed: kg fresh, its part by area of what was cut over several beds at once. */
final class Weighing {
    private final Basis basis;
    private final Cropping cropping;
    private double kilograms;
    private final SortedMap<Long, String> shared = new TreeMap<>();
    private boolean unweighed;

    Weighing(Basis basis, Cropping cropping, Working working) {
        this.basis = basis;
        this.cropping = cropping;
        cropping.harvests().forEach(entry -> add(entry, working));
    }

    double kilograms() {
        return kilograms;
    }

    boolean sharedByArea() {
        return !shared.isEmpty();
    }

    /** By number of the harvest, the beds it was shared over. */
    SortedMap<Long, String> shared() {
        return shared;
    }

    /** Whether something was harvested whose weight is not known. */
    boolean isIncomplete() {
        return unweighed;
    }

    private void add(Entry entry, Working working) {
        Harvested harvested = (Harvested) entry.fact();
        working.behind(entry);
        OptionalDouble weight = kilograms(harvested);
        if (weight.isEmpty()) {
            unweighed = true;
            working.missing("the weight of " + harvested.quantity() + " (#" + entry.number()
                    + "): a count or a volume has no weight of its own; weigh one and correct the entry with --each");
            return;
        }
        kilograms += weight.getAsDouble() * share(entry, working);
        if (harvested.weighed() == Weighed.DIRTY) {
            working.remark("#" + entry.number() + " was weighed dirty: soil is in the weight");
        }
    }

    private static OptionalDouble kilograms(Harvested harvested) {
        if (harvested.quantity().isWeight()) {
            return OptionalDouble.of(harvested.quantity().kilograms());
        }
        Mass each = harvested.each();
        boolean counted = harvested.quantity().quantity().unit().dimension() == Dimension.COUNT;
        return each == null || !counted
                ? OptionalDouble.empty()
                : OptionalDouble.of(harvested.quantity().quantity().inBase().doubleValue() * each.grams() / 1000);
    }

    private double share(Entry entry, Working working) {
        boolean named = BedAreas.beds(entry).contains(cropping.bed());
        if (named && BedAreas.beds(entry).size() == 1) {
            return 1;
        }
        shared.put(
                entry.number(), BedAreas.beds(entry).stream().map(BedId::name).collect(Collectors.joining(" ")));
        BedAreas.beds(entry).stream()
                .filter(bed -> !basis.fits(bed, entry))
                .forEach(bed ->
                        working.remark("#" + entry.number() + " does not fit " + bed + ": its share is left out"));
        // A part of a split bed has its share of what was cut from the whole before.
        double all = basis.areas.squareMetres(entry);
        return named || all <= 0 ? basis.areas.share(entry, cropping.bed()) : cropping.squareMetres() / all;
    }
}

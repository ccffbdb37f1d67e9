package bedledger.projections.history;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BedState.Stand;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.Planting;
import bedledger.language.Step;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The croppings of every bed, read off its timeline; what stands in a bed that is split goes on in its parts. */
public final class Croppings {
    private Croppings() {}

    /** All croppings begun by the end of a day, bed by bed in natural order, each bed's in the order they began. */
    public static List<Cropping> of(Farm farm, LocalDate asOf) {
        return farm.beds().stream().flatMap(bed -> of(farm, bed, asOf).stream()).toList();
    }

    /** The croppings of one bed begun by the end of a day, in the order they began. */
    public static List<Cropping> of(Farm farm, BedId bed, LocalDate asOf) {
        Walk walk = new Walk(bed);
        farm.bed(bed).steps().stream()
                .filter(Step::fits)
                .filter(step -> !step.entry().head().doneOn().isAfter(asOf))
                .forEach(walk::take);
        return walk.all();
    }

    private record Key(CropName crop, boolean cover, long entry) {
        static Key of(Stand stand) {
            return new Key(stand.crop(), stand.cover(), stand.entry());
        }
    }

    private static final class Growing {
        final List<Entry> plantings = new ArrayList<>();
        final List<Entry> harvests = new ArrayList<>();
        double squareMetres;
        Optional<Entry> end = Optional.empty();
    }

    private static final class Walk {
        private final BedId bed;
        private final Map<Key, Growing> begun = new LinkedHashMap<>();
        /** Those of them that have not ended: few, however long the bed was worked. */
        private final Map<Key, Growing> standing = new LinkedHashMap<>();

        Walk(BedId bed) {
            this.bed = bed;
        }

        void take(Step<BedState> step) {
            step.before()
                    .crops()
                    .forEach(
                            stand -> growing(stand).squareMetres = step.before().squareMetres());
            step.after().crops().forEach(stand -> plant(stand, step));
            new LinkedHashMap<>(standing).forEach((key, growing) -> {
                harvest(key, growing, step.entry());
                end(key, growing, step);
            });
        }

        private Growing growing(Stand stand) {
            return begun.computeIfAbsent(Key.of(stand), key -> {
                Growing growing = new Growing();
                standing.put(key, growing);
                return growing;
            });
        }

        private void plant(Stand stand, Step<BedState> step) {
            Growing growing = growing(stand);
            growing.squareMetres = step.after().squareMetres();
            Entry entry = step.entry();
            if (entry.number() == stand.entry() || plants(entry.fact(), stand)) {
                growing.plantings.add(entry);
            }
        }

        private static void harvest(Key key, Growing growing, Entry entry) {
            if (!key.cover()
                    && entry.fact() instanceof Harvesting.Harvested harvested
                    && harvested.crop().equals(key.crop())) {
                growing.harvests.add(entry);
            }
        }

        private void end(Key key, Growing growing, Step<BedState> step) {
            boolean moves = step.entry().fact() instanceof Land.BedSplit split
                    && split.bed().equals(bed);
            boolean stands = step.after().crops().stream().map(Key::of).anyMatch(key::equals);
            boolean elsewhere = !BedAreas.beds(step.entry()).contains(bed);
            if (moves || (!stands && elsewhere)) {
                begun.remove(key);
                standing.remove(key);
            } else if (!stands) {
                growing.end = Optional.of(step.entry());
                standing.remove(key);
            }
        }

        List<Cropping> all() {
            List<Cropping> all = new ArrayList<>();
            begun.forEach((key, growing) -> all.add(new Cropping(
                    bed,
                    key.crop(),
                    key.cover(),
                    growing.squareMetres,
                    growing.plantings,
                    growing.harvests,
                    growing.end)));
            return List.copyOf(all);
        }
    }

    private static boolean plants(Fact fact, Stand stand) {
        if (fact instanceof Planting.CoverSown cover) {
            return stand.cover() && cover.crop().equals(stand.crop());
        }
        if (fact instanceof Planting.Sown sown) {
            return !stand.cover() && sown.crop().equals(stand.crop());
        }
        return fact instanceof Planting.Transplanted set
                && !stand.cover()
                && set.crop().equals(stand.crop());
    }
}

package bedledger.projections.trends;

import bedledger.language.BedId;
import bedledger.projections.history.Cropping;
import bedledger.projections.tables.Crop;
import bedledger.projections.tables.Tables;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** What stood in each bed in each season, with the letter of its botanical family. */
public final class Rotation {
    private final List<Cropping> croppings;
    private final Tables tables;
    private final Map<String, String> letters;

    Rotation(List<Cropping> croppings, Tables tables) {
        this.croppings = croppings;
        this.tables = tables;
        this.letters = letters(tables);
    }

    /** One family with its letter. */
    public record Family(String letter, String name) {}

    /**
     * One crop or cover crop that stood in a bed in a season.
     *
     * @param plain its name in the tables, or as typed
     * @param families empty where the tables do not know the crop
     */
    public record Stood(Cropping cropping, String plain, List<Family> families) {
        public Stood {
            families = List.copyOf(families);
        }
    }

    /** What stood in a bed on some day of a season, in the order of planting. */
    public List<Stood> in(BedId bed, Season season) {
        return croppings.stream()
                .filter(each -> each.bed().equals(bed) && stood(each, season))
                .map(each -> new Stood(each, plain(each), families(each)))
                .toList();
    }

    private static boolean stood(Cropping cropping, Season season) {
        return !cropping.since().isAfter(season.to())
                && cropping.ended().map(end -> !end.isBefore(season.from())).orElse(true);
    }

    private String plain(Cropping cropping) {
        return tables.crop(cropping.crop().name())
                .map(Crop::name)
                .orElse(cropping.crop().name());
    }

    private List<Family> families(Cropping cropping) {
        return tables.crop(cropping.crop().name()).stream()
                .flatMap(crop -> crop.families().stream())
                .map(family -> new Family(letters.getOrDefault(family, "?"), family))
                .toList();
    }

    /** The families of what stood in the beds, by letter. */
    public List<Family> key() {
        return croppings.stream()
                .flatMap(each -> families(each).stream())
                .distinct()
                .sorted(java.util.Comparator.comparing(Family::letter))
                .toList();
    }

    /** A letter of its own name for each family of the tables: the first that is still free, so it is the same in every book. */
    private static Map<String, String> letters(Tables tables) {
        SortedSet<String> families = new TreeSet<>();
        tables.crops().forEach(crop -> families.addAll(crop.families()));
        Map<String, String> letters = new TreeMap<>();
        List<String> taken = new ArrayList<>();
        for (String family : families) {
            String upper = family.toUpperCase(Locale.ROOT);
            String letter = upper.chars()
                    .mapToObj(Character::toString)
                    .filter(each -> !taken.contains(each))
                    .findFirst()
                    .orElse(upper);
            taken.add(letter);
            letters.put(family, letter);
        }
        return Collections.unmodifiableMap(letters);
    }
}

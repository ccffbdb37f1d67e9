package bedledger.cli.write;

import bedledger.language.BadValue;
import bedledger.language.BedId;
import bedledger.language.FieldId;
import bedledger.language.LotId;
import bedledger.language.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads beds, lots and other places as people say them. */
final class PlaceWords {
    private static final Pattern RANGE = Pattern.compile("(.*?)([0-9]{1,4})\\.\\.(.*?)([0-9]{1,4})");
    private static final int MOST_BEDS = 500;
    private final Known known;

    PlaceWords(Known known) {
        this.known = known;
    }

    /** One word as one bed or several: an id, a range (N1..N4), a field's name, another name of a bed. */
    List<String> beds(String word, boolean newOnes) {
        Matcher range = RANGE.matcher(word);
        if (range.matches()) {
            return range(word, range).stream()
                    .map(bed -> newOnes ? bed : bed(bed))
                    .toList();
        }
        if (newOnes) {
            return List.of(word);
        }
        Optional<String> id = known.spelling("bed", word);
        if (id.isPresent()) {
            return List.of(id.get());
        }
        Optional<String> field = known.spelling("field", word);
        if (field.isPresent()) {
            return bedsOf(new FieldId(field.get()));
        }
        List<String> called = names(known.called(word));
        return called.isEmpty() ? List.of(bed(word)) : called;
    }

    private List<String> bedsOf(FieldId field) {
        List<String> beds = names(known.bedsOf(field));
        if (beds.isEmpty()) {
            throw new BadValue(
                    field.toString(),
                    "no beds are laid out in this field yet",
                    "enter them first: did lay-out N1..N4 --field " + quoted(field.toString())
                            + " --length 20m --width 0.75m");
        }
        return beds;
    }

    private static String quoted(String name) {
        return name.contains(" ") ? '"' + name + '"' : name;
    }

    private static List<String> names(List<BedId> beds) {
        return beds.stream().map(BedId::name).toList();
    }

    private List<String> range(String word, Matcher range) {
        int from = Integer.parseInt(range.group(2));
        int to = Integer.parseInt(range.group(4));
        boolean samePrefix = range.group(3).isEmpty() || range.group(3).equalsIgnoreCase(range.group(1));
        if (!samePrefix || to < from || to - from >= MOST_BEDS) {
            throw new BadValue(word, "this is no range of beds", "write it like N1..N4");
        }
        boolean padded = range.group(2).startsWith("0") && range.group(2).length() > 1;
        String shape = padded ? "%s%0" + range.group(2).length() + "d" : "%s%d";
        List<String> beds = new ArrayList<>();
        for (int number = from; number <= to; number++) {
            beds.add(String.format(Locale.ROOT, shape, range.group(1), number));
        }
        return beds;
    }

    private String bed(String word) {
        if (known.spelling("bed", word).isEmpty() && word.matches(".*[0-9]-.*[0-9]")) {
            throw new BadValue(word, "there is no such bed", "write a range with two dots: " + word.replace("-", ".."));
        }
        return known.spelling("bed", word)
                .orElseThrow(() -> new BadValue(
                        word,
                        "there is no such bed",
                        nearest(
                                "bed",
                                word,
                                "a new bed is entered with: did lay-out " + word
                                        + " --field FIELD --length 20m --width 0.75m")));
    }

    /** Another kind of place; unknown ones pass as typed where the judge of timelines has a better answer. */
    String place(String kind, String word) {
        return known.spelling(kind, word).orElse(word.strip());
    }

    String listedMaterial(String word) {
        return known.spelling("material", word)
                .orElseThrow(() -> new BadValue(
                        word,
                        "no material of that name is listed",
                        nearest(
                                "material",
                                word,
                                "list it first, approved or not: did list-material \"" + word + "\"")));
    }

    private String nearest(String kind, String word, String otherwise) {
        return Words.nearest(word, List.copyOf(known.names(kind)))
                .map(name -> "did you mean " + name + "? If not, " + otherwise)
                .orElse(otherwise);
    }

    /** A lot with its harvest year: the year of the act, or the year before if only that one had such a lot. */
    String lot(String word, int year) {
        String name = word.strip();
        if (name.matches("[12][0-9]{3}/.+")) {
            return known.spelling("lot", name).orElse(name);
        }
        return known.spelling("lot", year + "/" + name)
                .or(() -> known.spelling("lot", (year - 1) + "/" + name))
                .orElse(year + "/" + name);
    }

    /** A name for a new lot: three letters of the crop, month and day, and a number if that is taken. */
    LotId newLot(String crop, java.time.LocalDate day) {
        String letters = crop.replaceAll("[^\\p{L}]", "");
        String start = letters.substring(0, Math.min(3, letters.length())).toUpperCase(Locale.ROOT);
        String name = String.format(Locale.ROOT, "%s-%02d%02d", start, day.getMonthValue(), day.getDayOfMonth());
        LotId lot = new LotId(day.getYear(), name);
        for (int more = 2; known.hasLot(lot); more++) {
            lot = new LotId(day.getYear(), name + "-" + more);
        }
        return lot;
    }
}

package bedledger.projections.history;

import bedledger.language.BedId;
import bedledger.language.Entry;
import java.util.Locale;
import java.util.Optional;

/**
 * Work recorded on one entry, in person-minutes: over all its beds, and this bed's share by area.
 *
 * @param beds how many beds the entry names
 */
public record Labour(double minutes, double here, int beds) {
    /** People × minutes; empty unless both were recorded. */
    static Optional<Labour> of(Entry entry, BedId bed, BedAreas areas) {
        Integer people = entry.head().people();
        Integer each = entry.head().minutes();
        if (people == null || each == null) {
            return Optional.empty();
        }
        double minutes = (double) people * each;
        return Optional.of(new Labour(
                minutes, minutes * areas.share(entry, bed), BedAreas.beds(entry).size()));
    }

    public boolean sharedByArea() {
        return beds > 1;
    }

    public String words() {
        String all = number(minutes) + " minutes";
        return sharedByArea() ? all + " over " + beds + " beds, " + number(here) + " here by area" : all;
    }

    static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value).replaceAll("\\.0$", "");
    }
}

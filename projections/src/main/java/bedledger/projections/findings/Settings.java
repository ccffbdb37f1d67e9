package bedledger.projections.findings;

import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Farm;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/** The readings that are on; everything else in a rule book is not for a setting to change. */
public record Settings(Set<Reading> on) {
    public Settings {
        on = Set.copyOf(on);
    }

    public static Settings defaults() {
        EnumSet<Reading> on = EnumSet.noneOf(Reading.class);
        for (Reading reading : Reading.values()) {
            if (reading.byDefault()) {
                on.add(reading);
            }
        }
        return new Settings(on);
    }

    /** As a book has chosen by the end of a day: of each reading the last choice in the order of the work, else the default. */
    public static Settings of(Farm farm, LocalDate day) {
        Settings settings = defaults();
        for (Map.Entry<Reading, Entry> chosen : chosen(farm, day).entrySet()) {
            settings = settings.with(chosen.getKey(), choice(chosen.getValue()).applies());
        }
        return settings;
    }

    /** The entries that chose, by reading. A reading that this edition does not know chooses nothing. */
    public static Map<Reading, Entry> chosen(Farm farm, LocalDate day) {
        Map<Reading, Entry> chosen = new EnumMap<>(Reading.class);
        farm.ofKind(BookKeeping.ReadingChosen.class).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(day))
                .forEach(entry ->
                        Reading.parse(choice(entry).reading()).ifPresent(reading -> chosen.put(reading, entry)));
        return chosen;
    }

    private static BookKeeping.ReadingChosen choice(Entry entry) {
        return (BookKeeping.ReadingChosen) entry.fact();
    }

    public Settings with(Reading reading, boolean set) {
        EnumSet<Reading> changed = on.isEmpty() ? EnumSet.noneOf(Reading.class) : EnumSet.copyOf(on);
        if (set) {
            changed.add(reading);
        } else {
            changed.remove(reading);
        }
        return new Settings(changed);
    }

    public boolean is(Reading reading) {
        return on.contains(reading);
    }
}

package bedledger.projections.findings;

import java.util.EnumSet;
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

package bedledger.projections.history;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Step;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/** Bed areas by day, and how what was done on several beds at once is shared among them: by area. */
public final class BedAreas {
    private final Farm farm;
    private final Map<BedId, NavigableMap<LocalDate, Double>> known = new HashMap<>();

    public BedAreas(Farm farm) {
        this.farm = farm;
    }

    /** The beds an entry names, in its order. */
    public static List<BedId> beds(Entry entry) {
        return entry.fact().places().stream()
                .filter(BedId.class::isInstance)
                .map(BedId.class::cast)
                .toList();
    }

    /** The area of the bed top in m² at the end of a day; 0 while there is no such bed. */
    public double squareMetres(BedId bed, LocalDate day) {
        Map.Entry<LocalDate, Double> last =
                known.computeIfAbsent(bed, this::areas).floorEntry(day);
        return last == null ? 0 : last.getValue();
    }

    private NavigableMap<LocalDate, Double> areas(BedId bed) {
        NavigableMap<LocalDate, Double> areas = new TreeMap<>();
        for (Step<BedState> step : farm.bed(bed).steps()) {
            areas.put(step.entry().head().doneOn(), step.after().squareMetres());
        }
        return areas;
    }

    /** The area of all the beds an entry names, m². */
    public double squareMetres(Entry entry) {
        return beds(entry).stream()
                .mapToDouble(bed -> squareMetres(bed, entry.head().doneOn()))
                .sum();
    }

    /** A bed's share of what an entry says of several beds, by area; equal shares where no area is known, 0 for a bed not named. */
    public double share(Entry entry, BedId bed) {
        List<BedId> beds = beds(entry);
        if (!beds.contains(bed)) {
            return 0;
        }
        double all = squareMetres(entry);
        return all > 0 ? squareMetres(bed, entry.head().doneOn()) / all : 1.0 / beds.size();
    }
}

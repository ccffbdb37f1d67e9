package bedledger.projections.breakdown;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Care;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Step;
import bedledger.projections.history.BedAreas;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What one bed's residue meets day by day: weather, watering, tarp, work. */
final class BedDays {
    final Climate climate;
    final boolean[] covered;
    /** Water factor of standing residue; not a number where no rain is known. */
    final double[] standingWater;

    private final Map<Integer, List<Work>> works = new HashMap<>();
    private final double[] watering;

    /** Reads the bed's timeline up to a day; after it the bed lies as it lay then. */
    BedDays(Farm farm, BedId bed, Climate climate, BedAreas areas, LocalDate asOf) {
        this.climate = climate;
        covered = new boolean[climate.air.length];
        watering = new double[climate.air.length];
        boolean tarp = false;
        int drawn = 0;
        for (Step<BedState> step : farm.bed(bed).steps()) {
            Entry entry = step.entry();
            if (!step.fits() || entry.head().doneOn().isAfter(asOf)) {
                continue;
            }
            int at = climate.index(entry.head().doneOn());
            drawn = cover(drawn, at, tarp);
            tarp = step.after().tarp() != null;
            take(entry, at, bed, areas);
        }
        cover(drawn, covered.length, tarp);
        standingWater = wetness();
    }

    private int cover(int from, int to, boolean tarp) {
        int end = Math.min(Math.max(to, from), covered.length);
        for (int at = from; at < end; at++) {
            covered[at] = tarp;
        }
        return end;
    }

    private void take(Entry entry, int at, BedId bed, BedAreas areas) {
        if (at < 0 || at >= covered.length) {
            return;
        }
        Work.of(entry.fact())
                .ifPresent(work ->
                        works.computeIfAbsent(at, each -> new ArrayList<>()).add(work));
        if (entry.fact() instanceof Care.Irrigated watered) {
            watering[at] += millimetres(watered, entry, bed, areas);
        }
    }

    /** Watering counts where an amount is known, and only then. */
    private static double millimetres(Care.Irrigated watered, Entry entry, BedId bed, BedAreas areas) {
        if (watered.depth() != null) {
            return watered.depth().metres() * 1000;
        }
        double area = areas.squareMetres(bed, entry.head().doneOn());
        return watered.volume() == null || area <= 0 ? 0 : watered.volume().litres() * areas.share(entry, bed) / area;
    }

    private double[] wetness() {
        double[] wet = new double[covered.length];
        double yesterday = 0;
        int dry = 0;
        for (int at = 0; at < wet.length; at++) {
            double water = climate.rain[at] + watering[at];
            if (Double.isNaN(water)) {
                wet[at] = Double.NaN;
                yesterday = Constants.RAIN_UNKNOWN.value();
                dry = 0;
            } else {
                dry = water > 0 ? 0 : dry + 1;
                wet[at] = Decomposition.standingWater(water, yesterday, dry);
                yesterday = wet[at];
            }
        }
        return wet;
    }

    List<Work> works(int at) {
        return works.getOrDefault(at, List.of());
    }

    /** The last day from an index on that residue was worked into the soil; -1 if none. */
    int lastWorkedIn(int from) {
        return works.entrySet().stream()
                .filter(each -> each.getKey() >= from)
                .filter(each -> each.getValue().stream().anyMatch(Work::worksIn))
                .mapToInt(Map.Entry::getKey)
                .max()
                .orElse(-1);
    }
}

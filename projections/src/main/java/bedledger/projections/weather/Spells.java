package bedledger.projections.weather;

import java.time.LocalDate;

/** Lets a mean daily rain fall in spells: drizzle every day would keep residue wet as no real month does. */
final class Spells {
    private Spells() {}

    static double rain(LocalDate day, double meanMillimetres) {
        int every = WeatherTable.days("days between rains");
        return Math.floorMod(day.toEpochDay(), every) == 0 ? meanMillimetres * every : 0 * meanMillimetres;
    }
}

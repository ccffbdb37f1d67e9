package bedledger.projections.weather;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;

/** The mean of the same calendar days in the years that were measured, over a few days on either side. */
final class SameDays {
    private static final int YEAR = 366;
    private final double[][] sums = new double[3][YEAR];
    private final int[][] counts = new int[3][YEAR];

    /**
     * Adds up what was measured.
     *
     * @param measured minimum, maximum and rain of a day since 1970; null where the temperatures are not known
     */
    SameDays(long first, long last, LongFunction<double @Nullable []> measured) {
        double[][] dailySums = new double[3][YEAR];
        int[][] dailyCounts = new int[3][YEAR];
        for (long at = first; at <= last; at++) {
            double[] day = measured.apply(at);
            if (day != null) {
                int place = place(LocalDate.ofEpochDay(at));
                for (int value = 0; value < 3; value++) {
                    if (!Double.isNaN(day[value])) {
                        dailySums[value][place] += day[value];
                        dailyCounts[value][place]++;
                    }
                }
            }
        }
        spread(dailySums, dailyCounts);
    }

    /** February 29 has a place of its own, so that a date keeps its place in every year. */
    private static int place(LocalDate day) {
        return LocalDate.of(2000, day.getMonthValue(), day.getDayOfMonth()).getDayOfYear() - 1;
    }

    private void spread(double[][] dailySums, int[][] dailyCounts) {
        int window = WeatherTable.days("same days window");
        for (int value = 0; value < 3; value++) {
            for (int place = 0; place < YEAR; place++) {
                for (int away = -window; away <= window; away++) {
                    int from = Math.floorMod(place + away, YEAR);
                    sums[value][place] += dailySums[value][from];
                    counts[value][place] += dailyCounts[value][from];
                }
            }
        }
    }

    boolean knows(LocalDate day) {
        return counts[0][place(day)] >= WeatherTable.days("fewest same days");
    }

    /** Minimum, maximum and mean daily rain; not a number where too little was measured. */
    double[] on(LocalDate day) {
        int place = place(day);
        double[] means = new double[3];
        Arrays.setAll(
                means,
                value -> counts[value][place] < WeatherTable.days("fewest same days")
                        ? Double.NaN
                        : sums[value][place] / counts[value][place]);
        return means;
    }
}

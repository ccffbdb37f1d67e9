package bedledger.projections.weather;

import java.util.Arrays;
import java.util.SortedMap;

/** Daily values in primitive arrays from a first day on; what is missing is not a number. */
final class DailySeries {
    private static final double[] UNKNOWN = {Double.NaN, Double.NaN, Double.NaN};
    private final long first;
    private final double[] min;
    private final double[] max;
    private final double[] rain;

    /** From days since 1970 to minimum °C, maximum °C and rain mm. */
    DailySeries(SortedMap<Long, double[]> days) {
        first = days.isEmpty() ? 0 : days.firstKey();
        int length = days.isEmpty() ? 0 : (int) (days.lastKey() - first + 1);
        min = new double[length];
        max = new double[length];
        rain = new double[length];
        for (int at = 0; at < length; at++) {
            double[] day = days.getOrDefault(first + at, UNKNOWN);
            min[at] = day[0];
            max[at] = day[1];
            rain[at] = day[2];
        }
    }

    static double[] unknown() {
        return Arrays.copyOf(UNKNOWN, UNKNOWN.length);
    }

    long first() {
        return first;
    }

    long last() {
        return first + min.length - 1;
    }

    int span() {
        return min.length;
    }

    private boolean holds(long day) {
        return day >= first && day <= last();
    }

    /** Whether both temperatures of the day are known. */
    boolean hasTemperatures(long day) {
        return holds(day) && !Double.isNaN(min[(int) (day - first)]) && !Double.isNaN(max[(int) (day - first)]);
    }

    double min(long day) {
        return holds(day) ? min[(int) (day - first)] : Double.NaN;
    }

    double max(long day) {
        return holds(day) ? max[(int) (day - first)] : Double.NaN;
    }

    double rain(long day) {
        return holds(day) ? rain[(int) (day - first)] : Double.NaN;
    }
}

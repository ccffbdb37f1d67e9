package bedledger.projections.weather;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * What stands in for soil temperature where no probe lies in it: the running mean of the air's daily means, °C.
 *
 * <p>Judgement; the number of days is in the weather table. It ends on the day asked about.
 */
public final class SoilWarmth {
    /** How it was come by, in one sentence. */
    public static final String METHOD = "no soil probe: the mean air temperature of the last "
            + WeatherTable.days("running mean") + " days stands in (judgement)";

    private final Weather weather;

    public SoilWarmth(Weather weather) {
        this.weather = weather;
    }

    /** The same for a row of days at once: daily means of the air in, soil out; not a number where the day is missing. */
    public static double[] runningMean(double[] air) {
        int window = WeatherTable.days("running mean");
        double[] soil = new double[air.length];
        for (int at = 0; at < air.length; at++) {
            double sum = 0;
            int known = 0;
            for (int back = Math.max(0, at - window + 1); back <= at; back++) {
                if (!Double.isNaN(air[back])) {
                    sum += air[back];
                    known++;
                }
            }
            soil[at] = Double.isNaN(air[at]) ? Double.NaN : sum / known;
        }
        return soil;
    }

    /** Empty where the day itself is missing; other days missing are left out of the mean. */
    public OptionalDouble on(LocalDate day) {
        if (weather.on(day).isEmpty()) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        int known = 0;
        for (int back = 0; back < WeatherTable.days("running mean"); back++) {
            var there = weather.on(day.minusDays(back));
            if (there.isPresent()) {
                sum += there.get().mean();
                known++;
            }
        }
        return OptionalDouble.of(sum / known);
    }
}

package bedledger.projections.weather;

import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Degree days of one day or a span, °C·d. */
public final class DegreeDays {
    private DegreeDays() {}

    /** Mean of minimum and maximum above a base, not below 0 (Midwestern Regional Climate Center: averaging method). */
    public static double mean(DayWeather day, double base) {
        return Math.max(0, day.mean() - base);
    }

    /** The modified 50/86 F method: minimum raised to 50 F, maximum cut to 86 F, then the mean above 50 F (Iowa State University). */
    public static double modified(DayWeather day) {
        double floor = WeatherTable.get("modified floor");
        double cap = WeatherTable.get("modified cap");
        return (clamped(day.minC(), floor, cap) + clamped(day.maxC(), floor, cap)) / 2 - floor;
    }

    private static double clamped(double value, double floor, double cap) {
        return Math.min(cap, Math.max(floor, value));
    }

    /** The sum over a span, both ends included; empty where a day is missing. */
    public static OptionalDouble over(
            Weather weather, LocalDate from, LocalDate to, ToDoubleFunction<DayWeather> ofDay) {
        double sum = 0;
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
            var known = weather.on(day);
            if (known.isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += ofDay.applyAsDouble(known.get());
        }
        return OptionalDouble.of(sum);
    }
}

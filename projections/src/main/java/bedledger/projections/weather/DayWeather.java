package bedledger.projections.weather;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The weather of one day: air temperature in °C, rain in mm.
 *
 * @param rainMm empty where nothing is known of it, which is not the same as none
 * @param origin of the temperatures
 * @param rainOrigin of the rain
 */
public record DayWeather(
        LocalDate day, double minC, double maxC, OptionalDouble rainMm, Origin origin, Optional<Origin> rainOrigin) {
    public DayWeather {
        if (!(minC <= maxC)) {
            throw new IllegalArgumentException(day + ": the minimum " + minC + " °C is above the maximum " + maxC);
        }
        if (rainMm.isPresent() != rainOrigin.isPresent()) {
            throw new IllegalArgumentException(day + ": rain comes with its origin, or not at all");
        }
    }

    /** Half of minimum and maximum, °C. */
    public double mean() {
        return (minC + maxC) / 2;
    }
}

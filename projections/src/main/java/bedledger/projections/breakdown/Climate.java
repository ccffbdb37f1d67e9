package bedledger.projections.breakdown;

import bedledger.projections.weather.SoilWarmth;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;

/** The weather of a span of days in plain arrays, read once for all beds; what is missing is not a number. */
final class Climate {
    final LocalDate from;
    final LocalDate to;
    final double[] air;
    final double[] soil;
    final double[] rain;

    Climate(Weather weather, LocalDate from, LocalDate to) {
        this.from = from;
        this.to = to;
        int days = (int) (to.toEpochDay() - from.toEpochDay()) + 1;
        air = new double[days];
        rain = new double[days];
        for (int at = 0; at < days; at++) {
            var day = weather.on(from.plusDays(at));
            air[at] = day.isEmpty() ? Double.NaN : day.get().mean();
            rain[at] = day.isEmpty() ? Double.NaN : day.get().rainMm().orElse(Double.NaN);
        }
        soil = SoilWarmth.runningMean(air);
    }

    int index(LocalDate day) {
        return (int) (day.toEpochDay() - from.toEpochDay());
    }

    LocalDate day(int index) {
        return from.plusDays(index);
    }
}

package bedledger.projections.weather;

import java.time.LocalDate;
import java.util.Optional;

/** Daily weather of a farm. */
public interface Weather {
    /** A farm of whose weather nothing is known. */
    Weather NONE = day -> Optional.empty();

    /** The weather of a day; empty where nothing is known of its temperature, and nothing can stand in. */
    Optional<DayWeather> on(LocalDate day);

    /** What the days of a span rest on, both ends included; nothing where the end lies before the start. */
    default Coverage over(LocalDate from, LocalDate to) {
        return Coverage.of(this, from, to);
    }
}

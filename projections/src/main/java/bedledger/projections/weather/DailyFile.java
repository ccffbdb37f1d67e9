package bedledger.projections.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.LongStream;

/** One file of daily weather as it was read. */
public final class DailyFile {
    private final String name;
    private final Origin origin;
    private final Optional<String> station;
    private final DailySeries series;
    private final int dropped;
    private final int days;

    DailyFile(String name, Origin origin, Optional<String> station, SortedMap<Long, double[]> days, int dropped) {
        this.name = name;
        this.origin = origin;
        this.station = station;
        this.series = new DailySeries(days);
        this.dropped = dropped;
        this.days = (int) LongStream.rangeClosed(series.first(), series.last())
                .filter(series::hasTemperatures)
                .count();
    }

    public String name() {
        return name;
    }

    public Origin origin() {
        return origin;
    }

    /** The station's identifier, where the format has one. */
    public Optional<String> station() {
        return station;
    }

    DailySeries series() {
        return series;
    }

    /** Days of which both temperatures are known. */
    public int days() {
        return days;
    }

    /** Days between the first and the last of the file of which a temperature is not known. */
    public int missing() {
        return series.span() - days;
    }

    /** Values left out because the file itself marks them as doubtful, or because they contradict each other. */
    public int dropped() {
        return dropped;
    }

    /** Days with temperatures but no word on rain. */
    public int withoutRain() {
        return (int) LongStream.rangeClosed(series.first(), series.last())
                .filter(day -> series.hasTemperatures(day) && Double.isNaN(series.rain(day)))
                .count();
    }

    public Optional<LocalDate> first() {
        return series.span() == 0 ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(series.first()));
    }

    public Optional<LocalDate> last() {
        return series.span() == 0 ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(series.last()));
    }

    /** Such as "1461 days, 2012-01-01 to 2015-12-31, 0 missing, 3 values dropped". */
    public String words() {
        List<String> said = new ArrayList<>();
        said.add(days + (days == 1 ? " day" : " days"));
        first().ifPresent(day -> said.add(day + " to " + last().orElseThrow()));
        said.add(missing() + " missing");
        if (withoutRain() > 0) {
            said.add(withoutRain() + " without rain");
        }
        if (dropped > 0) {
            said.add(dropped + (dropped == 1 ? " value" : " values") + " dropped");
        }
        return String.join(", ", said);
    }
}

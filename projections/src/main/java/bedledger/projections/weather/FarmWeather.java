package bedledger.projections.weather;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Length;
import bedledger.language.Observation;
import bedledger.language.Temperature;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The weather of a farm, put together from its book and the files beside it. */
public final class FarmWeather implements Weather {
    private final Map<Long, double[]> notes = new HashMap<>();
    private final SortedSet<Long> halfNotes = new TreeSet<>();
    private final List<DailyFile> files;
    private final Optional<Normals> normals;
    private final long latest;
    private @Nullable SameDays sameDays;

    private FarmWeather(List<Entry> noted, List<DailyFile> files, Optional<Normals> normals, LocalDate latest) {
        this.files = files.stream()
                .sorted(Comparator.comparing(DailyFile::origin).thenComparing(DailyFile::name))
                .toList();
        this.normals = normals;
        this.latest = latest.toEpochDay();
        noted.forEach(this::take);
    }

    /**
     * Puts it together.
     *
     * @param files daily files; of two of a kind, the first by name is asked first
     * @param latest nothing measured after this day counts, as when a book is read as known on a day
     */
    public static FarmWeather of(Farm farm, List<DailyFile> files, Optional<Normals> normals, LocalDate latest) {
        return new FarmWeather(farm.ofKind(Observation.WeatherNoted.class), files, normals, latest);
    }

    /** A later note of the same day in the order of the work wins, value by value. */
    private void take(Entry entry) {
        Observation.WeatherNoted noted = (Observation.WeatherNoted) entry.fact();
        double[] day = notes.computeIfAbsent(entry.head().doneOn().toEpochDay(), each -> DailySeries.unknown());
        day[0] = noted.min() == null ? day[0] : celsius(noted.min());
        day[1] = noted.max() == null ? day[1] : celsius(noted.max());
        day[2] = noted.rain() == null ? day[2] : millimetres(noted.rain());
        boolean half = Double.isNaN(day[0]) != Double.isNaN(day[1]);
        if (half || day[0] > day[1]) {
            halfNotes.add(entry.head().doneOn().toEpochDay());
        } else {
            halfNotes.remove(entry.head().doneOn().toEpochDay());
        }
    }

    private static double celsius(Temperature temperature) {
        return temperature.celsius();
    }

    private static double millimetres(Length rain) {
        return rain.metres() * 1000;
    }

    @Override
    public Optional<DayWeather> on(LocalDate day) {
        long at = day.toEpochDay();
        Optional<DayWeather> measured = measured(day, at);
        return measured.isPresent() ? measured : stoodIn(day);
    }

    private Optional<DayWeather> measured(LocalDate day, long at) {
        if (at > latest) {
            return Optional.empty();
        }
        double[] note = notes.get(at);
        if (note != null && note[0] <= note[1]) {
            return Optional.of(with(day, note[0], note[1], Origin.NOTED));
        }
        for (DailyFile file : files) {
            if (file.series().hasTemperatures(at)) {
                return Optional.of(
                        with(day, file.series().min(at), file.series().max(at), file.origin()));
            }
        }
        return Optional.empty();
    }

    private DayWeather with(LocalDate day, double min, double max, Origin origin) {
        long at = day.toEpochDay();
        double[] note = at > latest ? null : notes.get(at);
        if (note != null && !Double.isNaN(note[2])) {
            return day(day, min, max, origin, note[2], Origin.NOTED);
        }
        for (DailyFile file : at > latest ? List.<DailyFile>of() : files) {
            if (!Double.isNaN(file.series().rain(at))) {
                return day(day, min, max, origin, file.series().rain(at), file.origin());
            }
        }
        double usual = normals.map(each -> each.rain(day)).orElse(Double.NaN);
        return day(day, min, max, origin, usual, Origin.NORMALS);
    }

    private static DayWeather day(
            LocalDate day, double min, double max, Origin origin, double rain, Origin rainOrigin) {
        return Double.isNaN(rain)
                ? new DayWeather(day, min, max, OptionalDouble.empty(), origin, Optional.empty())
                : new DayWeather(day, min, max, OptionalDouble.of(rain), origin, Optional.of(rainOrigin));
    }

    private Optional<DayWeather> stoodIn(LocalDate day) {
        if (normals.isPresent()) {
            return normals.map(each -> with(day, each.min(day), each.max(day), Origin.NORMALS));
        }
        SameDays years = sameDays();
        if (!years.knows(day)) {
            return Optional.empty();
        }
        double[] mean = years.on(day);
        DayWeather withRain = with(day, mean[0], mean[1], Origin.SAME_DAYS);
        return Optional.of(
                withRain.rainMm().isPresent()
                        ? withRain
                        : day(day, mean[0], mean[1], Origin.SAME_DAYS, Spells.rain(day, mean[2]), Origin.SAME_DAYS));
    }

    private SameDays sameDays() {
        SameDays known = sameDays;
        if (known == null) {
            long first = Math.min(
                    files.stream()
                            .mapToLong(each -> each.series().first())
                            .min()
                            .orElse(Long.MAX_VALUE),
                    notes.keySet().stream().mapToLong(Long::longValue).min().orElse(Long.MAX_VALUE));
            long last = Math.max(
                    files.stream().mapToLong(each -> each.series().last()).max().orElse(Long.MIN_VALUE),
                    notes.keySet().stream().mapToLong(Long::longValue).max().orElse(Long.MIN_VALUE));
            known = new SameDays(first, Math.min(last, latest), this::values);
            sameDays = known;
        }
        return known;
    }

    private double @Nullable [] values(long at) {
        return measured(LocalDate.ofEpochDay(at), at)
                .map(each ->
                        new double[] {each.minC(), each.maxC(), each.rainMm().orElse(Double.NaN)})
                .orElse(null);
    }

    public List<DailyFile> files() {
        return files;
    }

    public Optional<Normals> normals() {
        return normals;
    }

    /** Days of which the book notes the temperatures. */
    public int noted() {
        return (int) notes.values().stream().filter(note -> note[0] <= note[1]).count();
    }

    /** Days of which the book notes the rain. */
    public int notedRain() {
        return (int)
                notes.values().stream().filter(note -> !Double.isNaN(note[2])).count();
    }

    /** Days of which the book notes only one of minimum and maximum, or a minimum above the maximum: not used. */
    public List<LocalDate> halfNoted() {
        return halfNotes.stream().map(LocalDate::ofEpochDay).toList();
    }

    /** The last day that anything was measured on; empty where nothing was. */
    public Optional<LocalDate> measuredTo() {
        long last = Math.max(
                files.stream()
                        .filter(each -> each.days() > 0)
                        .mapToLong(each -> each.series().last())
                        .max()
                        .orElse(Long.MIN_VALUE),
                notes.entrySet().stream()
                        .filter(each -> each.getValue()[0] <= each.getValue()[1])
                        .mapToLong(Map.Entry::getKey)
                        .max()
                        .orElse(Long.MIN_VALUE));
        return last == Long.MIN_VALUE ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(Math.min(last, latest)));
    }
}

package bedledger.projections.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the days of a span rest on.
 *
 * @param days of each origin of the temperatures; origins that gave none are left out
 * @param missing days of which no temperature is known
 * @param firstMissing the first of them
 * @param withoutRain days with a temperature of which no rain is known
 */
public record Coverage(
        LocalDate from,
        LocalDate to,
        SortedMap<Origin, Integer> days,
        int missing,
        Optional<LocalDate> firstMissing,
        int withoutRain) {
    public Coverage {
        days = Collections.unmodifiableSortedMap(new TreeMap<>(days));
    }

    static Coverage of(Weather weather, LocalDate from, LocalDate to) {
        Map<Origin, Integer> days = new EnumMap<>(Origin.class);
        int missing = 0;
        int withoutRain = 0;
        LocalDate first = null;
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
            Optional<DayWeather> known = weather.on(day);
            if (known.isEmpty()) {
                missing++;
                first = first == null ? day : first;
            } else {
                days.merge(known.get().origin(), 1, Integer::sum);
                withoutRain += known.get().rainMm().isEmpty() ? 1 : 0;
            }
        }
        return new Coverage(from, to, new TreeMap<>(days), missing, Optional.ofNullable(first), withoutRain);
    }

    public boolean isComplete() {
        return missing == 0;
    }

    /** Days that were measured, not stood in for. */
    public int measured() {
        return days.entrySet().stream()
                .filter(each -> each.getKey().isMeasured())
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    /** Such as "12 days GHCN-Daily file, 3 days monthly normals; no rain known on 4 days; 1 day missing". */
    public String words() {
        List<String> said = new ArrayList<>();
        List<String> known = days.entrySet().stream()
                .map(each -> counted(each.getValue()) + " " + each.getKey().words())
                .toList();
        said.add(known.isEmpty() ? "no weather" : String.join(", ", known));
        if (withoutRain > 0) {
            said.add("no rain known on " + counted(withoutRain));
        }
        firstMissing.ifPresent(day -> said.add(counted(missing) + " missing, the first " + day));
        return String.join("; ", said);
    }

    private static String counted(int days) {
        return days == 1 ? "1 day" : days + " days";
    }
}

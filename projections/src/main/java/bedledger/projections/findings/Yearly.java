package bedledger.projections.findings;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/** Puts what is to be told once a year together. */
final class Yearly {
    static <T> SortedMap<Integer, List<T>> of(Collection<T> things, Function<T, LocalDate> day) {
        SortedMap<Integer, List<T>> years = new TreeMap<>();
        for (T thing : things) {
            years.computeIfAbsent(day.apply(thing).getYear(), year -> new ArrayList<>())
                    .add(thing);
        }
        return years;
    }

    private Yearly() {}
}

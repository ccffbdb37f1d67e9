package bedledger.projections.estimate;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Deviations by cause, in the order of their names; it never changes, so figures of the same causes share the names. */
@SuppressWarnings("JdkObsolete") // SortedMap is what Estimate speaks of
final class Deviations extends AbstractMap<String, Deviation> implements SortedMap<String, Deviation> {
    static final Deviations NONE = new Deviations(FixedSet.none(), new Deviation[0]);

    private final FixedSet<String> causes;
    private final Deviation[] moved;

    /** {@code moved} stands in the order of the causes and is not changed afterwards. */
    Deviations(FixedSet<String> causes, Deviation[] moved) {
        this.causes = causes;
        this.moved = moved;
    }

    static Deviations of(String cause, Deviation moved) {
        return new Deviations(FixedSet.only(cause), new Deviation[] {moved});
    }

    static Deviations of(Map<String, Deviation> given) {
        if (given instanceof Deviations fixed) {
            return fixed;
        }
        FixedSet<String> causes = FixedSet.of(given.keySet());
        return new Deviations(causes, causes.stream().map(given::get).toArray(Deviation[]::new));
    }

    /** Those that matter beside a figure. */
    Deviations besides(double best) {
        int[] kept = IntStream.range(0, moved.length)
                .filter(at -> !moved[at].isNegligibleBeside(best))
                .toArray();
        if (kept.length == moved.length) {
            return this;
        }
        return new Deviations(
                FixedSet.of(Arrays.stream(kept).mapToObj(causes::at).toList()),
                Arrays.stream(kept).mapToObj(at -> moved[at]).toArray(Deviation[]::new));
    }

    /** Cause by cause together with another's; a cause that one of the two lacks moves it by nothing. */
    Deviations with(Deviations other, BinaryOperator<Deviation> joined) {
        FixedSet<String> all = causes.and(other.causes);
        Deviation[] together = new Deviation[all.size()];
        int mine = 0;
        int theirs = 0;
        for (int at = 0; at < together.length; at++) {
            boolean here = mine < moved.length && causes.at(mine).equals(all.at(at));
            boolean there =
                    theirs < other.moved.length && other.causes.at(theirs).equals(all.at(at));
            together[at] =
                    joined.apply(here ? moved[mine++] : Deviation.NONE, there ? other.moved[theirs++] : Deviation.NONE);
        }
        return new Deviations(all, together);
    }

    FixedSet<String> causes() {
        return causes;
    }

    @Override
    public @Nullable Deviation get(Object cause) {
        int at = causes.indexOf(cause);
        return at < 0 ? null : moved[at];
    }

    @Override
    public boolean containsKey(Object cause) {
        return causes.contains(cause);
    }

    @Override
    public Set<String> keySet() {
        return causes;
    }

    @Override
    public Collection<Deviation> values() {
        return Collections.unmodifiableList(Arrays.asList(moved));
    }

    @Override
    public Set<Entry<String, Deviation>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public int size() {
                return moved.length;
            }

            @Override
            public Iterator<Entry<String, Deviation>> iterator() {
                return IntStream.range(0, moved.length)
                        .mapToObj(at -> Map.entry(causes.at(at), moved[at]))
                        .iterator();
            }
        };
    }

    @Override
    public @Nullable Comparator<? super String> comparator() {
        return null;
    }

    @Override
    public String firstKey() {
        return causes.first();
    }

    @Override
    public String lastKey() {
        return causes.last();
    }

    @Override
    public SortedMap<String, Deviation> subMap(String from, String to) {
        return Collections.unmodifiableSortedMap(new TreeMap<>((Map<String, Deviation>) this).subMap(from, to));
    }

    @Override
    public SortedMap<String, Deviation> headMap(String to) {
        return Collections.unmodifiableSortedMap(new TreeMap<>((Map<String, Deviation>) this).headMap(to));
    }

    @Override
    public SortedMap<String, Deviation> tailMap(String from) {
        return Collections.unmodifiableSortedMap(new TreeMap<>((Map<String, Deviation>) this).tailMap(from));
    }
}

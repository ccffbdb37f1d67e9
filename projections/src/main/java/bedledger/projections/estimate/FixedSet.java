package bedledger.projections.estimate;

import java.util.AbstractSet;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A set in natural order that never changes, so that thousands of figures can share it.
 *
 * <p>Two of them are put together in one pass, and where one holds all of the other it is used again as it is.
 */
@SuppressWarnings("JdkObsolete") // SortedSet is what Grounds and Estimate speak of
final class FixedSet<T extends Comparable<T>> extends AbstractSet<T> implements SortedSet<T> {
    private final Object[] members;

    private FixedSet(Object[] members) {
        this.members = members;
    }

    static <T extends Comparable<T>> FixedSet<T> of(Collection<T> members) {
        return members instanceof FixedSet<T> fixed ? fixed : new FixedSet<>(new TreeSet<>(members).toArray());
    }

    static <T extends Comparable<T>> FixedSet<T> none() {
        return new FixedSet<>(new Object[0]);
    }

    static <T extends Comparable<T>> FixedSet<T> only(T member) {
        return new FixedSet<>(new Object[] {member});
    }

    FixedSet<T> and(FixedSet<T> other) {
        if (other.members == members || other.isEmpty()) {
            return this;
        }
        if (isEmpty()) {
            return other;
        }
        Object[] together = new Object[size() + other.size()];
        int count = 0;
        int mine = 0;
        int theirs = 0;
        while (mine < size() || theirs < other.size()) {
            int order = compare(mine, other, theirs);
            together[count++] = order <= 0 ? members[mine] : other.members[theirs];
            mine += order <= 0 ? 1 : 0;
            theirs += order >= 0 ? 1 : 0;
        }
        if (count == size()) {
            return this;
        }
        return count == other.size() ? other : new FixedSet<>(Arrays.copyOf(together, count));
    }

    /** The order of one member here and one of the other; a set that is used up comes last. */
    private int compare(int mine, FixedSet<T> other, int theirs) {
        if (mine == size()) {
            return 1;
        }
        if (theirs == other.size() || members[mine] == other.members[theirs]) {
            return theirs == other.size() ? -1 : 0;
        }
        return at(mine).compareTo(other.at(theirs));
    }

    /** The place of a member, counted from 0; below 0 where it is none. */
    int indexOf(Object member) {
        return Arrays.binarySearch(members, member);
    }

    @SuppressWarnings("unchecked")
    T at(int index) {
        return (T) members[index];
    }

    @Override
    public boolean contains(Object member) {
        return indexOf(member) >= 0;
    }

    @Override
    public int size() {
        return members.length;
    }

    @Override
    @SuppressWarnings("unchecked")
    public Iterator<T> iterator() {
        return (Iterator<T>) (Iterator<?>) Arrays.asList(members).iterator();
    }

    @Override
    public @Nullable Comparator<? super T> comparator() {
        return null;
    }

    @Override
    public T first() {
        return required(0);
    }

    @Override
    public T last() {
        return required(size() - 1);
    }

    private T required(int index) {
        if (isEmpty()) {
            throw new NoSuchElementException();
        }
        return at(index);
    }

    @Override
    public SortedSet<T> subSet(T from, T to) {
        return Collections.unmodifiableSortedSet(new TreeSet<>((Collection<T>) this).subSet(from, to));
    }

    @Override
    public SortedSet<T> headSet(T to) {
        return Collections.unmodifiableSortedSet(new TreeSet<>((Collection<T>) this).headSet(to));
    }

    @Override
    public SortedSet<T> tailSet(T from) {
        return Collections.unmodifiableSortedSet(new TreeSet<>((Collection<T>) this).tailSet(from));
    }
}

package bedledger.cli.read;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.Function;

/**
 * A long list made member by member as it is printed, and not kept: what a question finds is held once, not once more as it is said.
 *
 * @param <F> what was found
 * @param <T> how it is said
 */
final class Each<F, T> extends AbstractList<T> implements RandomAccess {
    private final List<F> found;
    private final Function<? super F, ? extends T> said;

    private Each(List<F> found, Function<? super F, ? extends T> said) {
        this.found = found;
        this.said = said;
    }

    static <F, T> List<T> of(List<F> found, Function<? super F, ? extends T> said) {
        return new Each<>(found, said);
    }

    @Override
    public T get(int index) {
        return said.apply(found.get(index));
    }

    @Override
    public int size() {
        return found.size();
    }
}

package bedledger.ledger.entry;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What texts were read as, so that the same text is read once and its value held once: a book says the same days, beds and crops
 * again and again.
 *
 * <p>Bounded in number and length, so that no file fills the memory with it.
 */
final class Kept<T> {
    private static final int MOST = 16_384;
    private static final int LONGEST = 64;

    private final Map<String, T> values = new ConcurrentHashMap<>();
    private final Function<String, T> reading;

    /** {@code reading} gives a value that never changes, the same for the same text. */
    Kept(Function<String, T> reading) {
        this.reading = reading;
    }

    T of(String text) {
        @Nullable T known = values.get(text);
        if (known != null) {
            return known;
        }
        T read = reading.apply(text);
        if (text.length() <= LONGEST && values.size() < MOST) {
            values.put(text, read);
        }
        return read;
    }
}

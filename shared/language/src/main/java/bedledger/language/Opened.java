package bedledger.language;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The state of a place that is opened once and used afterwards: a field, a pile, a lot.
 *
 * @param opening the entry that opened it; null while there is no such place
 * @param uses the entries that used it since
 */
public record Opened(@Nullable Entry opening, List<Entry> uses) {
    static final Opened NOT_YET = new Opened(null, List.of());

    public boolean exists() {
        return opening != null;
    }
}

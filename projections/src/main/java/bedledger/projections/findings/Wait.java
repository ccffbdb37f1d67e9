package bedledger.projections.findings;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A day before which a rule would speak against a harvest.
 *
 * @param from the first day it is content with; null if no day can be given as the record stands
 * @param why in a sentence for a grower
 * @param entries the numbers of the entries it rests on
 */
public record Wait(String rule, @Nullable LocalDate from, String why, List<Long> entries, String citation) {
    public Wait {
        entries = List.copyOf(entries);
    }
}

package bedledger.projections.audit;

import java.util.List;

/**
 * Why a thing is more likely to be picked.
 *
 * @param words as in "more went out of 2025/CAR-1 than came in"
 * @param weight from the table
 * @param entries the entries it is seen from, by number
 */
public record Reason(String words, double weight, List<Long> entries) {
    public Reason {
        entries = entries.stream().distinct().sorted().toList();
    }
}

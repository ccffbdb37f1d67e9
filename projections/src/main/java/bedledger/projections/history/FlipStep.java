package bedledger.projections.history;

import bedledger.language.Entry;
import java.util.Optional;

/**
 * One thing done to a bed on its way from a finished crop to the next planting.
 *
 * @param words the fact in words
 * @param days days since the step before, or since the crop ended
 * @param labour empty where people and minutes were not both recorded
 */
public record FlipStep(Entry entry, String words, long days, Optional<Labour> labour) {}

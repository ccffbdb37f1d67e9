package bedledger.language;

import java.util.List;

/** What was seen or done: a fact in the past tense, never changed once written. */
public sealed interface Fact
        permits BookKeeping,
                Land,
                Stock,
                BedWork,
                Planting,
                Fertility,
                Care,
                Observation,
                Harvesting,
                Selling,
                Oversight {

    /** What is wrong with the fact taken alone, however the book stands; empty if nothing is. */
    default List<Problem> faults() {
        return List.of();
    }

    /** The places whose timelines this fact stands in. */
    default List<Place> places() {
        return Acts.of(getClass()).places(this);
    }
}

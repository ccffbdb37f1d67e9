package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.language.Entry;

/** An entry of which nothing could be counted for a bed, and why. */
public record NotCounted(Entry entry, BedId bed, String why) {}

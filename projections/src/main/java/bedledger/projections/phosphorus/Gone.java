package bedledger.projections.phosphorus;

import bedledger.language.Entry;
import bedledger.language.Harvesting.Harvested;
import java.util.OptionalDouble;

/** What left the farm from one harvest on one line of a sale or gift; kg fresh, below 0 for what came back. */
record Gone(Entry harvest, Harvested harvested, Entry by, OptionalDouble kilograms) {}

/** Compost mixing against the worked examples of the Cornell Waste Management Institute. */
@NullMarked
package bedledger.projections.outside.compost;

import org.jspecify.annotations.NullMarked;

/** Breakdown of residue against the outside world: published constants, tables worked out from them, published trials. */
@NullMarked
package bedledger.projections.outside.breakdown;

import org.jspecify.annotations.NullMarked;

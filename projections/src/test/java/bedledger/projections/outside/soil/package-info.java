/** Nitrogen, phosphorus and soil carbon against published figures. */
@NullMarked
package bedledger.projections.outside.soil;

import org.jspecify.annotations.NullMarked;

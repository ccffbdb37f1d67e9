/** What came in of a material, a seed lot or a pile, and what it was used for. */
@NullMarked
package bedledger.projections.stock;

import org.jspecify.annotations.NullMarked;

/**
 * Phosphorus brought to each bed and season less what was sold off it.
 *
 * <p>All as P, never as P2O5. What came back with a crop's own residue was there before and counts on neither side. Sold is what left
 * the farm, sales and gifts, in the season of its harvest; what was culled or has no outlet on record is not counted as gone.
 */
@NullMarked
package bedledger.projections.phosphorus;

import org.jspecify.annotations.NullMarked;

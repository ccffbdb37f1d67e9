/**
 * What a compost pile is mixed of: water and C:N of a blend, and how much of one more ingredient brings it to a goal.
 *
 * <p>The two mixing equations of the Cornell Waste Management Institute (moisture; C:N). Figures said for an ingredient go first,
 * then the tables and the farm's own values; an ingredient of which something is missing leaves the blend incomplete. What is
 * reckoned here stands beside a C:N that was recorded, never in its place.
 */
@NullMarked
package bedledger.projections.compost;

import org.jspecify.annotations.NullMarked;

/**
 * Beds over the seasons: what went back and was hauled off, the working of the soil, the days under cover, the rotation, the soil tests.
 *
 * <p>Nothing is folded here: it is put together from what went back ({@code returned}), from the beds' timelines and from their croppings.
 * A season is named after the day it begins on; the last one reaches only as far as the day asked.
 */
@NullMarked
package bedledger.projections.trends;

import org.jspecify.annotations.NullMarked;

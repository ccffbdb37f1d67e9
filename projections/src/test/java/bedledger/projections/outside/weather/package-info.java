/** Weather against the outside world: published formats, published degree-day examples, a published series. */
@NullMarked
package bedledger.projections.outside.weather;

import org.jspecify.annotations.NullMarked;

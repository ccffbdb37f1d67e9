/**
 * What was in and on each bed, when: state on a day, timeline with its corrections, crops from planting to end, flips.
 *
 * <p>Facts in words, nothing estimated; whatever no entry says is called not recorded.
 */
@NullMarked
package bedledger.projections.history;

import org.jspecify.annotations.NullMarked;

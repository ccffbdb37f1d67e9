/**
 * Mass balance of a crop or a material between two counts, by lot on paper, and whether seed, area and harvest hang together.
 *
 * <p>Exact sums of what was written, with the entries behind each; nothing is estimated but the typical yield, which is marked as such.
 * No tolerance is in the rule, so none is here.
 */
@NullMarked
package bedledger.projections.balance;

import org.jspecify.annotations.NullMarked;

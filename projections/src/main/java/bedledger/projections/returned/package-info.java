/**
 * What went back to each bed, piece by piece, with low, best and high, and the entries behind it.
 *
 * <p>A piece is the shoots or the roots of one cropping (of several beds where they were harvested together), or one
 * spreading. Evidence is taken in this order: quadrats cut before or at flailing, then the weighed harvest through the
 * harvest index, then a typical yield; the last is a guess and stays out of totals unless asked for. Missing is not
 * nothing: what cannot be worked out is named.
 */
@NullMarked
package bedledger.projections.returned;

import org.jspecify.annotations.NullMarked;

/**
 * Figures that say how sure they are: low, best, high, and what stands behind them.
 *
 * <p><b>How doubts are combined.</b> An estimate keeps, for each cause of doubt by name (a coefficient such as "broccoli
 * harvest index", a measurement such as "quadrats R1 #52"), by how much the figure moves when that cause alone sits at
 * its low end, and when it sits at its high end.
 *
 * <ul>
 *   <li>Two figures put together (sum, difference, product, ratio) are worked out again for each cause with that cause at
 *       its low and then its high end in both. So one coefficient used twice is wrong the same way twice: in a sum its two
 *       effects add up, in a ratio or a difference they may cancel, and a cause that cancels is dropped.
 *   <li>Different causes are taken as independent: their effects below the best value are squared, added and rooted to give
 *       the low end, those above it likewise the high end. The two sides may differ, and one may be nothing.
 *   <li>A cause with no range known moves neither end. It is named, so that nobody takes the band for the whole doubt.
 *   <li>A mass cannot be below nothing: an end that would be is drawn up to 0, its downward effects in proportion, and says so.
 * </ul>
 *
 * <p>First-order propagation of independent errors, one cause at a time, is common practice; combining the ends of
 * published ranges in quadrature as if they were standard errors is a judgement: the ends are not quantiles of a known
 * distribution. {@link bedledger.projections.estimate.Estimate#RULE} is the same in one paragraph, for reports.
 */
@NullMarked
package bedledger.projections.estimate;

import org.jspecify.annotations.NullMarked;

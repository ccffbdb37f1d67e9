/**
 * Soil carbon: what was measured, what the record says went in, and what two published balances and an old one make of it.
 *
 * <p>AMGv2 (Clivot et al. 2019) first, ICBM (Andrén and Kätterer 1997) as a second opinion, Hénin and Dupuis (1945) as many growers
 * were taught it. None of them saw beds like these. Nothing here says that soil carbon rose or fell before the change passes what
 * the samples could detect.
 */
@NullMarked
package bedledger.projections.soil;

import org.jspecify.annotations.NullMarked;

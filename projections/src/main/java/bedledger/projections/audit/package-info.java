/**
 * A mock audit: what an inspector might pick, drawn by lot and weighted to risk, and how far the record answers it.
 *
 * <p>It uses the traces, balances, findings and gaps as they are, and judges nothing anew. The weights are a table.
 */
@NullMarked
package bedledger.projections.audit;

import org.jspecify.annotations.NullMarked;

/** What inspections asked for, and what was answered. */
@NullMarked
package bedledger.projections.oversight;

import org.jspecify.annotations.NullMarked;

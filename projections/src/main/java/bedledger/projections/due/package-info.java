/**
 * What is due, to be looked at or not to be done yet on a day, each with the command that would answer it.
 *
 * <p>The rules' days are asked of {@link bedledger.projections.findings.MayI}; nothing here judges by itself, and nothing refuses.
 */
@NullMarked
package bedledger.projections.due;

import org.jspecify.annotations.NullMarked;

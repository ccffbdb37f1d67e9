/** Checks against published figures, each with its source beside it. */
@NullMarked
package bedledger.projections.outside;

import org.jspecify.annotations.NullMarked;

/** The rules against cases worked out strictly from the published texts; dates invented, the source beside each. */
@NullMarked
package bedledger.projections.outside.law;

import org.jspecify.annotations.NullMarked;

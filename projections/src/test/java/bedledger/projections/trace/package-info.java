@NullMarked
package bedledger.projections.trace;

import org.jspecify.annotations.NullMarked;

@NullMarked
package bedledger.projections.gaps;

import org.jspecify.annotations.NullMarked;

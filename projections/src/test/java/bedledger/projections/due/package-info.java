@NullMarked
package bedledger.projections.due;

import org.jspecify.annotations.NullMarked;

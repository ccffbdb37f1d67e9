@NullMarked
package bedledger.projections;

import org.jspecify.annotations.NullMarked;

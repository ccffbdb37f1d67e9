@NullMarked
package bedledger.projections.audit;

import org.jspecify.annotations.NullMarked;

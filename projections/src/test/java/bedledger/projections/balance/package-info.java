@NullMarked
package bedledger.projections.balance;

import org.jspecify.annotations.NullMarked;

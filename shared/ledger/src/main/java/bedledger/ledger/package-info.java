@NullMarked
package bedledger.ledger;

import org.jspecify.annotations.NullMarked;

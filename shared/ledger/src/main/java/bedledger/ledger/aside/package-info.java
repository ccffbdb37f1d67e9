/**
 * Moves the unfinished end of an append-only file out of the way without losing a byte. Used by what writes.
 */
@NullMarked
package bedledger.ledger.aside;

import org.jspecify.annotations.NullMarked;

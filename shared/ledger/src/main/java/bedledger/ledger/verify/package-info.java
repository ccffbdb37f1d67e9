/**
 * The read-only verifier. It shares no code with what writes the log, and needs no database.
 */
@NullMarked
package bedledger.ledger.verify;

import org.jspecify.annotations.NullMarked;

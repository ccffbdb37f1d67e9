/**
 * The journal: an append-only file of lines, where a forced line is the commit.
 */
@NullMarked
package bedledger.ledger.journal;

import org.jspecify.annotations.NullMarked;

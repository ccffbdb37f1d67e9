/** Turns entries into the lines of the log and back; class and package names never reach a line. */
@NullMarked
package bedledger.ledger.entry;

import org.jspecify.annotations.NullMarked;

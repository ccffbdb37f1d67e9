/** The book on disk: its folder, the H2 database with Axon's event storage, the journal beside it, and how they are kept equal. */
@NullMarked
package bedledger.ledger.store;

import org.jspecify.annotations.NullMarked;

/**
 * The Merkle tree of RFC 9162 section 2.1: hashes, the compact tree kept while writing, and proofs.
 */
@NullMarked
package bedledger.ledger.tree;

import org.jspecify.annotations.NullMarked;

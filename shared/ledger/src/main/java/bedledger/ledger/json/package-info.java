/**
 * Canonical JSON: the one spelling of a line. A narrow profile of RFC 8785 with whole numbers only.
 */
@NullMarked
package bedledger.ledger.json;

import org.jspecify.annotations.NullMarked;

/**
 * The container of a packet: a zip that is written the same each time, and read without trusting a byte of it. See FORMAT-PACKET.md.
 */
@NullMarked
package bedledger.ledger.packet;

import org.jspecify.annotations.NullMarked;

/**
 * Signed notes and checkpoints as C2SP signed-note and tlog-checkpoint describe them, signed with Ed25519.
 */
@NullMarked
package bedledger.ledger.note;

import org.jspecify.annotations.NullMarked;

package bedledger.ledger.journal;

/**
 * How far a reading came.
 *
 * @param lines complete lines handed on
 * @param end byte offset behind the last of them, from where a later reading can go on
 * @param unfinishedBytes bytes after it that were passed over, because they are no acknowledged line
 */
public record Reading(long lines, long end, long unfinishedBytes) {}

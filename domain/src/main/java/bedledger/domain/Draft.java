package bedledger.domain;

import bedledger.language.Fact;
import bedledger.language.Head;

/**
 * An act about to be written.
 *
 * @param head with a place in the day of 0 where none was given: one is then proposed
 */
public record Draft(Head head, Fact fact) {}

package bedledger.ledger.entry;

import bedledger.language.Fact;
import bedledger.language.Head;

/** What one entry says: the head that all entries share, and the fact. This is the payload of an Axon event. */
public record Deed(Head head, Fact fact) {}

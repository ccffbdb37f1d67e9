package bedledger.domain;

import bedledger.ledger.entry.Deed;
import org.axonframework.modelling.command.TargetAggregateIdentifier;

/** Void what is in force of an act. */
record StrikeAct(@TargetAggregateIdentifier String act, Deed deed) {}

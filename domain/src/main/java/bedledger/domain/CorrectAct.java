package bedledger.domain;

import bedledger.ledger.entry.Deed;
import org.axonframework.modelling.command.TargetAggregateIdentifier;

/** Replace what is in force of an act by a whole new fact of the same kind. */
record CorrectAct(@TargetAggregateIdentifier String act, Deed deed) {}

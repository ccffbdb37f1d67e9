package bedledger.domain;

import bedledger.ledger.entry.Deed;
import org.axonframework.modelling.command.TargetAggregateIdentifier;

/** Write an act for the first time. */
record RecordAct(@TargetAggregateIdentifier String act, Deed deed) {}

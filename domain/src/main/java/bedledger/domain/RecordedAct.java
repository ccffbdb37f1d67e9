package bedledger.domain;

import bedledger.language.BookKeeping;
import bedledger.language.Problem;
import bedledger.language.Refused;
import bedledger.ledger.entry.Deed;
import java.util.List;
import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.messaging.annotation.SourceId;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.jspecify.annotations.Nullable;

/** One act: recorded, then perhaps corrected or struck. What it may do to a bed, lot or pile is judged before it gets here. */
final class RecordedAct {
    @AggregateIdentifier
    private @Nullable String act;

    private @Nullable Deed inForce;

    RecordedAct() {}

    @CommandHandler
    RecordedAct(RecordAct command) {
        act = command.act();
        AggregateLifecycle.apply(command.deed());
    }

    @CommandHandler
    void handle(CorrectAct command) {
        Deed old = requireInForce();
        if (old.fact().getClass() != command.deed().fact().getClass()) {
            throw new Refused(List.of(new Problem(
                    "correct",
                    bedledger.language.Acts.of(command.deed().fact().getClass()).word(),
                    "a correction is of the same kind as what it corrects",
                    "strike the wrong entry, and write the right one")));
        }
        AggregateLifecycle.apply(command.deed());
    }

    @CommandHandler
    void handle(StrikeAct command) {
        requireInForce();
        AggregateLifecycle.apply(command.deed());
    }

    private Deed requireInForce() {
        if (inForce == null) {
            throw new Refused(List.of(new Problem(
                    "correct",
                    String.valueOf(act),
                    "the act was struck; nothing of it is in force",
                    "write it as a new entry")));
        }
        return inForce;
    }

    @EventSourcingHandler
    void on(Deed deed, @SourceId String source) {
        act = source;
        inForce = deed.fact() instanceof BookKeeping.Struck ? null : deed;
    }
}

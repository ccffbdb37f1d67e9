package bedledger.projections.findings;

import bedledger.language.BedState;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Step;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One entry on a bed's timeline.
 *
 * @param own false where a part of a split bed has it from the bed that was split
 */
record BedStep(Step<BedState> step, boolean own) {
    Entry entry() {
        return step.entry();
    }

    Fact fact() {
        return step.entry().fact();
    }

    LocalDate day() {
        return step.entry().head().doneOn();
    }

    long number() {
        return step.entry().number();
    }

    BedState before() {
        return step.before();
    }

    BedState after() {
        return step.after();
    }

    boolean fits() {
        return step.fits();
    }

    <F extends Fact> Optional<Done<F>> as(Class<F> kind) {
        return kind.isInstance(fact()) ? Optional.of(Done.of(entry(), kind)) : Optional.empty();
    }
}

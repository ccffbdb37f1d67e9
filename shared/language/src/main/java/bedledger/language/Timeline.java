package bedledger.language;

import java.time.LocalDate;
import java.util.List;

/**
 * The entries in force that touch one place, in the order the work was done, each with the state before and after.
 *
 * @param start the state before the first of them
 */
public record Timeline<S>(Place place, S start, List<Step<S>> steps) {
    /** The state at the end of a day. */
    public S on(LocalDate day) {
        S state = start;
        for (Step<S> step : steps) {
            if (step.entry().head().doneOn().isAfter(day)) {
                break;
            }
            state = step.after();
        }
        return state;
    }

    public S now() {
        return steps.isEmpty() ? start : steps.get(steps.size() - 1).after();
    }

    public List<Misfit> misfits() {
        return steps.stream().flatMap(step -> step.misfits().stream()).toList();
    }
}

package bedledger.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Folds the entries that touch one place into its timeline. Total: what does not fit changes nothing and is marked.
 *
 * @param <S> the state of such a place
 */
interface PlaceFold<S> {
    S start();

    /** Why the fact cannot be, given the state. */
    Optional<Misfit> misfit(S state, Entry entry);

    S after(S state, Entry entry);

    default Timeline<S> over(Place place, List<Entry> inOrder) {
        return over(place, start(), inOrder);
    }

    default Timeline<S> over(Place place, S start, List<Entry> inOrder) {
        List<Step<S>> steps = new ArrayList<>();
        S state = start;
        for (Entry entry : inOrder) {
            List<Misfit> misfits = misfit(state, entry).stream().toList();
            S after = misfits.isEmpty() ? after(state, entry) : state;
            steps.add(new Step<>(entry, state, after, misfits));
            state = after;
        }
        return new Timeline<>(place, start, List.copyOf(steps));
    }
}

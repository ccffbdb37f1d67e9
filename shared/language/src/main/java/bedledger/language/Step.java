package bedledger.language;

import java.util.List;

/**
 * One entry on a timeline.
 *
 * @param before the state it met
 * @param after the state it left; the same where it does not fit
 * @param misfits why it does not fit; empty where it does
 */
public record Step<S>(Entry entry, S before, S after, List<Misfit> misfits) {
    public boolean fits() {
        return misfits.isEmpty();
    }
}

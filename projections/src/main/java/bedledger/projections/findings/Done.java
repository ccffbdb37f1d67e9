package bedledger.projections.findings;

import bedledger.language.Entry;
import bedledger.language.Fact;
import java.time.LocalDate;

/** A fact of a known kind, with the entry that holds it. */
record Done<F extends Fact>(Entry entry, F fact) {
    static <F extends Fact> Done<F> of(Entry entry, Class<F> kind) {
        return new Done<>(entry, kind.cast(entry.fact()));
    }

    LocalDate day() {
        return entry.head().doneOn();
    }

    long number() {
        return entry.number();
    }
}

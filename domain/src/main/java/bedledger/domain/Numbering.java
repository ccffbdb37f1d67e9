package bedledger.domain;

import bedledger.language.Entry;
import bedledger.language.PersonId;
import bedledger.ledger.store.Ledger;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gives drafts the numbers they would have if they were written now, and each the next place in its day unless it names one. */
final class Numbering {
    private final Ledger ledger;
    private final ActIds ids;

    Numbering(Ledger ledger, ActIds ids) {
        this.ledger = ledger;
        this.ids = ids;
    }

    List<Entry> entries(List<Draft> drafts, PersonId writer, Instant at) {
        Map<LocalDate, Integer> places = new HashMap<>();
        List<Entry> entries = new ArrayList<>();
        for (Draft draft : drafts) {
            LocalDate day = draft.head().doneOn();
            int place = draft.head().placeInDay();
            if (place == 0) {
                place = places.computeIfAbsent(day, ledger::lastPlaceIn) + 1;
            }
            places.merge(day, place, Math::max);
            long number = ledger.size() + 1 + entries.size();
            entries.add(
                    new Entry(number, ids.next(at), 0, at, writer, draft.head().placed(place), draft.fact()));
        }
        return entries;
    }
}

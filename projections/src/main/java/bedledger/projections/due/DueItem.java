package bedledger.projections.due;

import bedledger.language.NaturalOrder;
import bedledger.language.Place;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing to do, to look at, or not to do yet.
 *
 * @param day the day it is due, or the first day it may be done; null if no end is in sight
 * @param subject what it is about, as in "R7 beet"
 * @param places the beds, fields and piles concerned, in natural order
 * @param says in a sentence, without a full stop
 * @param why the reasons, in whole sentences; empty if the sentence says all
 * @param entries the numbers of the entries it rests on, ascending
 * @param command what would answer it, as typed after {@code bedledger}, with CAPITALS where the grower knows better
 * @param basis the rule's text, or that it is common practice or a setting
 */
public record DueItem(
        Kind kind,
        @Nullable LocalDate day,
        String subject,
        List<Place> places,
        String says,
        String why,
        List<Long> entries,
        String command,
        String basis) {
    static final String PRACTICE = "common practice, no source";

    static final Comparator<DueItem> ORDER = Comparator.comparing(DueItem::kind)
            .thenComparing(DueItem::day, Comparator.nullsLast(Comparator.<LocalDate>naturalOrder()))
            .thenComparing(DueItem::subject, NaturalOrder.INSTANCE)
            .thenComparing(DueItem::says);

    /** How it presses. */
    public enum Kind {
        NOT_YET("Not yet"),
        DO("To do"),
        LOOK("To look at"),
        FREE("Free from today");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public DueItem {
        places = List.copyOf(places);
        entries = entries.stream().distinct().sorted().toList();
    }

    /** Whether its day has gone by. */
    public boolean overdue(LocalDate on) {
        return kind == Kind.DO && day != null && day.isBefore(on);
    }
}

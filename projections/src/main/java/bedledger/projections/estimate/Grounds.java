package bedledger.projections.estimate;

import bedledger.projections.tables.Citation;
import java.util.Collection;
import java.util.SortedSet;

/** What a figure rests on: methods in words, citations of the tables, entry numbers of the book, and notes to show with it. */
public record Grounds(
        SortedSet<String> methods, SortedSet<Citation> citations, SortedSet<Long> entries, SortedSet<String> notes) {
    static final Grounds NONE = new Grounds(FixedSet.none(), FixedSet.none(), FixedSet.none(), FixedSet.none());

    public Grounds {
        methods = FixedSet.of(methods);
        citations = FixedSet.of(citations);
        entries = FixedSet.of(entries);
        notes = FixedSet.of(notes);
    }

    Grounds and(Grounds other) {
        return new Grounds(
                both(methods, other.methods),
                both(citations, other.citations),
                both(entries, other.entries),
                both(notes, other.notes));
    }

    Grounds citing(Citation citation) {
        return new Grounds(methods, both(citations, FixedSet.only(citation)), entries, notes);
    }

    Grounds by(String method) {
        return new Grounds(FixedSet.only(method), citations, entries, notes);
    }

    Grounds noting(String note) {
        return new Grounds(methods, citations, entries, both(notes, FixedSet.only(note)));
    }

    Grounds behind(Collection<Long> more) {
        return new Grounds(methods, citations, both(entries, FixedSet.of(more)), notes);
    }

    private static <T extends Comparable<T>> SortedSet<T> both(SortedSet<T> one, SortedSet<T> two) {
        return FixedSet.of(one).and(FixedSet.of(two));
    }
}

package bedledger.projections.estimate;

import bedledger.projections.tables.Citation;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/** What a figure rests on: methods in words, citations of the tables, entry numbers of the book, and notes to show with it. */
public record Grounds(
        SortedSet<String> methods, SortedSet<Citation> citations, SortedSet<Long> entries, SortedSet<String> notes) {
    static final Grounds NONE = new Grounds(new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), new TreeSet<>());

    public Grounds {
        methods = Collections.unmodifiableSortedSet(new TreeSet<>(methods));
        citations = Collections.unmodifiableSortedSet(new TreeSet<>(citations));
        entries = Collections.unmodifiableSortedSet(new TreeSet<>(entries));
        notes = Collections.unmodifiableSortedSet(new TreeSet<>(notes));
    }

    Grounds and(Grounds other) {
        return new Grounds(
                both(methods, other.methods),
                both(citations, other.citations),
                both(entries, other.entries),
                both(notes, other.notes));
    }

    Grounds citing(Citation citation) {
        return new Grounds(methods, both(citations, new TreeSet<>(Collections.singleton(citation))), entries, notes);
    }

    Grounds by(String method) {
        return new Grounds(new TreeSet<>(Collections.singleton(method)), citations, entries, notes);
    }

    Grounds noting(String note) {
        return new Grounds(methods, citations, entries, both(notes, new TreeSet<>(Collections.singleton(note))));
    }

    Grounds behind(SortedSet<Long> more) {
        return new Grounds(methods, citations, both(entries, more), notes);
    }

    private static <T extends Comparable<T>> SortedSet<T> both(SortedSet<T> one, SortedSet<T> two) {
        SortedSet<T> together = new TreeSet<>(one);
        together.addAll(two);
        return together;
    }
}

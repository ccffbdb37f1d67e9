package bedledger.projections.returned;

import bedledger.language.Entry;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** What comes together while a piece is worked out: remarks, gaps, entries. */
final class Working {
    private final Set<String> remarks = new LinkedHashSet<>();
    private final Set<String> missing = new LinkedHashSet<>();
    private final SortedSet<Long> entries = new TreeSet<>();

    Working copy() {
        Working copy = new Working();
        copy.remarks.addAll(remarks);
        copy.missing.addAll(missing);
        copy.entries.addAll(entries);
        return copy;
    }

    void remark(String sentence) {
        remarks.add(sentence);
    }

    void remarks(Collection<String> sentences) {
        remarks.addAll(sentences);
    }

    void missing(String gap) {
        missing.add(gap);
    }

    void missing(Collection<String> gaps) {
        missing.addAll(gaps);
    }

    void behind(Entry entry) {
        entries.add(entry.number());
    }

    void behind(Collection<Entry> several) {
        several.forEach(this::behind);
    }

    List<String> remarks() {
        return new ArrayList<>(remarks);
    }

    List<String> missing() {
        return new ArrayList<>(missing);
    }

    SortedSet<Long> entries() {
        return entries;
    }
}

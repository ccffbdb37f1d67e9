package bedledger.projections.tables;

import java.util.Comparator;

/** Where a value comes from: table, edition, source key and status; for an own value the farm's own words are the key. */
public record Citation(String table, String edition, String source, Status status) implements Comparable<Citation> {
    private static final Comparator<Citation> ORDER = Comparator.comparing(Citation::table)
            .thenComparing(Citation::edition)
            .thenComparing(Citation::source)
            .thenComparing(Citation::status);

    public Citation {
        if (table.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException("a citation names its table and its source");
        }
    }

    @Override
    public int compareTo(Citation other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        String where = edition.isEmpty() ? table : table + " " + edition;
        return where + ", " + source + " (" + status.words() + ")";
    }
}

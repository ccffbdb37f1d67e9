package bedledger.projections.trends;

import bedledger.projections.returned.SourceKind;

/** A kind of matter, measured or estimated: quadrats and recorded quantities on the one side; on the other what is inferred from a harvest, and roots always. */
public record Source(SourceKind kind, boolean measured) implements Comparable<Source> {
    @Override
    public int compareTo(Source other) {
        int byKind = kind.compareTo(other.kind);
        return byKind == 0 ? Boolean.compare(other.measured, measured) : byKind;
    }

    public String words() {
        return kind.words() + (measured ? ", measured" : ", estimated");
    }
}

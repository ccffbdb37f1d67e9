package bedledger.language;

/** What became of the roots when residue left the bed. */
public enum Roots {
    CUT,
    PULLED
}

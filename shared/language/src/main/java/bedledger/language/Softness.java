package bedledger.language;

/** How far residue has gone, as the hand tells. */
public enum Softness {
    WHOLE,
    SOFT,
    BREAK_IN_HAND,
    GONE
}

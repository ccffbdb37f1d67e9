package bedledger.language;

/** Whether quadrats were cut before, at or after the residue was shredded: only the first two measure what is returned. */
public enum Cut {
    BEFORE_FLAILING,
    AT_FLAILING,
    AFTER_FLAILING
}

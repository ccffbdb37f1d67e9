package bedledger.language;

/** Whether produce was packed into new containers or into used ones. */
public enum Containers {
    NEW,
    USED
}

package bedledger.language;

/** Whether an inspection was announced. */
public enum Notice {
    ANNOUNCED,
    UNANNOUNCED
}

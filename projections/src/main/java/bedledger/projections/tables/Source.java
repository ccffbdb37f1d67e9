package bedledger.projections.tables;

/** What a source key stands for: title with edition, table or page, and the copy that was read ("-" for none). */
public record Source(String key, String citation, String whereRead) {}

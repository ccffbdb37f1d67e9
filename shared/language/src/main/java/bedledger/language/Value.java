package bedledger.language;

/** A value written as one string: {@code toString} gives what the static {@code parse(String)} of its class reads back. */
public interface Value {}

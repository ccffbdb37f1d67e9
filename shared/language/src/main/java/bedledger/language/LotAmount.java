package bedledger.language;

/** So much of one lot, as on one line of an invoice. */
public record LotAmount(LotId lot, Amount quantity) implements Located {
    /** Reads "2025/PA-1012=90kg". */
    public static LotAmount parse(String text) {
        int equals = text.indexOf('=');
        if (equals < 0) {
            throw new BadValue(text, "it does not say how much of the lot", "write it like PA-1012=90kg");
        }
        return new LotAmount(LotId.parse(text.substring(0, equals)), Amount.parse(text.substring(equals + 1)));
    }

    @Override
    public Place place() {
        return lot;
    }

    @Override
    public String toString() {
        return lot + "=" + quantity;
    }
}

package bedledger.projections.tables;

import org.jspecify.annotations.Nullable;

/**
 * A farm's own measurement of a coefficient, which wins over the table.
 *
 * <p>{@code of} is a crop or material in any spelling the tables know; value and range are in the unit of the quantity;
 * {@code source} says in the farm's words how it was measured.
 */
public record OwnValue(
        String of,
        Quantity quantity,
        double value,
        @Nullable Range range,
        String source) {
    /** The table name that own values are cited under. */
    public static final String TABLE = "own measurement";

    public OwnValue {
        if (of.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException("An own value was refused: entered '" + of + "', source '" + source
                    + "'. It must say of what it is and how it was measured.");
        }
    }

    Coefficient of(String name) {
        return new Coefficient(name, quantity, value, range, new Citation(TABLE, "", source, Status.OWN), "");
    }
}

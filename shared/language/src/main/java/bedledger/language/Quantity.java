package bedledger.language;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number as typed with the unit as typed; written "38.5 kg". */
public record Quantity(BigDecimal number, Unit unit) implements Value {
    private static final Pattern SHAPE = Pattern.compile("([+-]?[0-9]{1,12}(?:\\.[0-9]{1,9})?)\\s*(\\S.*)?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?[0-9]+,[0-9]+.*");

    /** Reads "38.5kg" or "38.5 kg". Throws {@link BadValue} for a missing or unknown unit, a decimal comma, or no number at all. */
    public static Quantity parse(String text) {
        return parse(text, "38.5kg, 85lb or 120heads");
    }

    /** The same, with examples of what is wanted here for whoever left the unit out. */
    static Quantity parse(String text, String examples) {
        String trimmed = text.strip();
        if (DECIMAL_COMMA.matcher(trimmed).matches()) {
            throw new BadValue(text, "a comma in a number can mean two things", "write a decimal point, as in 12.5kg");
        }
        Matcher shape = SHAPE.matcher(trimmed);
        if (!shape.matches()) {
            throw new BadValue(text, "this is not a number with a unit", "write it like " + examples);
        }
        String unit = shape.group(2);
        if (unit == null) {
            throw new BadValue(text, "the unit is missing", "write it like " + examples);
        }
        return new Quantity(
                new BigDecimal(shape.group(1)),
                Unit.spelt(unit.strip())
                        .orElseThrow(() -> new BadValue(
                                text,
                                "there is no unit '" + unit.strip() + "'",
                                "use kg, g, lb, oz, m, ft, m2, ha, L, gal …")));
    }

    /** The number in the base unit of the dimension; for temperatures °C. */
    public BigDecimal inBase() {
        if (unit == Unit.F) {
            return number.subtract(BigDecimal.valueOf(32))
                    .multiply(BigDecimal.valueOf(5))
                    .divide(BigDecimal.valueOf(9), java.math.MathContext.DECIMAL64);
        }
        return number.multiply(unit.factor());
    }

    Quantity within(Dimension dimension, String least, String most) {
        if (unit.dimension() != dimension) {
            throw new BadValue(toString(), "this is not " + dimension.words(), "write it like " + dimension.example());
        }
        if (number.signum() < 0 && dimension != Dimension.TEMPERATURE) {
            throw new BadValue(toString(), dimension.words() + " cannot be below zero", "leave the minus sign out");
        }
        if (inBase().compareTo(new BigDecimal(least)) < 0 || inBase().compareTo(new BigDecimal(most)) > 0) {
            throw new BadValue(
                    toString(),
                    "no farm bed, pile or lot has that much or that little",
                    "check the number and the unit" + (dimension == Dimension.TEMPERATURE ? ": C or F" : ""));
        }
        return this;
    }

    @Override
    public String toString() {
        return number.toPlainString() + " " + unit.symbol();
    }
}

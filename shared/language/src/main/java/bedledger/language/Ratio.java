package bedledger.language;

import java.math.BigDecimal;

/** A plain number without a unit, such as a pH or a carbon-to-nitrogen ratio, kept with the digits that were typed. */
public record Ratio(BigDecimal number) implements Value {
    private static final BigDecimal MOST = BigDecimal.valueOf(100_000);

    public Ratio {
        if (number.signum() < 0 || number.compareTo(MOST) > 0) {
            throw new BadValue(number.toPlainString(), "the number is below zero or absurdly large", "check it");
        }
    }

    public static Ratio parse(String text) {
        try {
            return new Ratio(new BigDecimal(text.strip()));
        } catch (NumberFormatException notANumber) {
            throw new BadValue(text, "this is not a number", "write digits and a decimal point, as in 6.7");
        }
    }

    public double value() {
        return number.doubleValue();
    }

    @Override
    public String toString() {
        return number.toPlainString();
    }
}

package bedledger.cli.chart;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;

/** Figures of a scale, the same in every country: a point, no groups. */
final class Plain extends NumberFormat {
    private static final long serialVersionUID = 1L;
    private static final MathContext DIGITS = new MathContext(6);

    @Override
    public StringBuffer format(double number, StringBuffer to, FieldPosition where) {
        BigDecimal rounded = new BigDecimal(number).round(DIGITS);
        return to.append(
                rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
    }

    @Override
    public StringBuffer format(long number, StringBuffer to, FieldPosition where) {
        return to.append(number);
    }

    @Override
    public Number parse(String text, ParsePosition from) {
        throw new UnsupportedOperationException("a scale is not read back");
    }
}

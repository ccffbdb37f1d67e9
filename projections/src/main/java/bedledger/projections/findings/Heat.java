package bedledger.projections.findings;

import bedledger.language.Temperature;
import bedledger.language.Unit;
import java.math.BigDecimal;

/** What a day's lowest reading says of the compost band; compared in the unit the reading was written in, so that 131 °F is in and 55 °C is. */
enum Heat {
    NOT_READ,
    COOL,
    RIGHT,
    HOT;

    static Heat of(Temperature reading, Figures figures) {
        String unit = reading.quantity().unit() == Unit.F ? ".f" : ".c";
        BigDecimal degrees = reading.quantity().number();
        if (degrees.compareTo(figures.number("compost.low" + unit)) < 0) {
            return COOL;
        }
        return degrees.compareTo(figures.number("compost.high" + unit)) > 0 ? HOT : RIGHT;
    }
}

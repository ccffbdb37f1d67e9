package bedledger.projections.estimate;

import bedledger.projections.tables.Tables;
import java.util.Locale;

/** The unit in which sentences speak of masses; figures themselves are kept in kg. */
public record MassUnit(String name, double kilograms) {
    public static final MassUnit KILOGRAM = new MassUnit("kg", 1);

    public static MassUnit pound() {
        return new MassUnit("lb", Tables.sampling().kilogramsInAPound());
    }

    /** At most two decimals, without idle zeros, such as "48 kg" or "4.07 kg". */
    public String words(double mass) {
        String number = String.format(Locale.ROOT, "%.2f", mass / kilograms)
                .replaceAll("0+$", "")
                .replaceAll("\\.$", "");
        return number + " " + name;
    }

    /** Three digits, with its band, such as "25.9 kg (5.30 to 25.9)". */
    public String words(Estimate mass) {
        return mass.ratioTo(Estimate.exact(kilograms, ""), name).inWords();
    }
}

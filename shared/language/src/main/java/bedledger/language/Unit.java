package bedledger.language;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit with its exact factor to the base unit of its dimension (g, m, m², L, 1, °C, %, min, g/cm³).
 *
 * <p>US customary factors are exact by definition (NIST Handbook 44, Appendix C: 1 lb = 0.45359237 kg, 1 in = 2.54 cm, 1 US gal =
 * 231 in³, 1 US bushel = 2150.42 in³). An acre is taken as 43,560 square international feet.
 */
public enum Unit {
    G(Dimension.MASS, "1", "g", "gram", "grams"),
    KG(Dimension.MASS, "1000", "kg", "kilo", "kilos"),
    T(Dimension.MASS, "1000000", "t", "tonne", "tonnes"),
    OZ(Dimension.MASS, "28.349523125", "oz"),
    LB(Dimension.MASS, "453.59237", "lb", "lbs"),
    SHORT_TON(Dimension.MASS, "907184.74", "short-ton", "short-tons"),
    MM(Dimension.LENGTH, "0.001", "mm"),
    CM(Dimension.LENGTH, "0.01", "cm"),
    M(Dimension.LENGTH, "1", "m"),
    IN(Dimension.LENGTH, "0.0254", "in", "inch", "inches"),
    FT(Dimension.LENGTH, "0.3048", "ft", "feet", "foot"),
    YD(Dimension.LENGTH, "0.9144", "yd"),
    M2(Dimension.AREA, "1", "m2", "m²", "sqm"),
    FT2(Dimension.AREA, "0.09290304", "ft2", "ft²", "sqft"),
    ARE(Dimension.AREA, "100", "are", "ares"),
    HA(Dimension.AREA, "10000", "ha"),
    ACRE(Dimension.AREA, "4046.8564224", "acre", "acres", "ac"),
    ML(Dimension.VOLUME, "0.001", "ml", "mL"),
    L(Dimension.VOLUME, "1", "L", "l", "litre", "litres", "liter", "liters"),
    M3(Dimension.VOLUME, "1000", "m3", "m³"),
    FLOZ(Dimension.VOLUME, "0.0295735295625", "fl-oz", "floz"),
    TSP(Dimension.VOLUME, "0.00492892159375", "tsp"),
    TBSP(Dimension.VOLUME, "0.01478676478125", "tbsp"),
    CUP(Dimension.VOLUME, "0.2365882365", "cup", "cups"),
    PT(Dimension.VOLUME, "0.473176473", "pt"),
    QT(Dimension.VOLUME, "0.946352946", "qt"),
    GAL(Dimension.VOLUME, "3.785411784", "gal"),
    BU(Dimension.VOLUME, "35.23907016688", "bu", "bushel", "bushels"),
    FT3(Dimension.VOLUME, "28.316846592", "ft3", "ft³"),
    YD3(Dimension.VOLUME, "764.554857984", "yd3", "yd³"),
    PLANT(Dimension.COUNT, "1", "plants", "plant"),
    HEAD(Dimension.COUNT, "1", "heads", "head"),
    BUNCH(Dimension.COUNT, "1", "bunches", "bunch"),
    PIECE(Dimension.COUNT, "1", "pieces", "piece", "each"),
    CRATE(Dimension.COUNT, "1", "crates", "crate"),
    BOX(Dimension.COUNT, "1", "boxes", "box"),
    FLAT(Dimension.COUNT, "1", "flats", "flat"),
    SEED(Dimension.COUNT, "1", "seeds", "seed"),
    C(Dimension.TEMPERATURE, "1", "C", "°C"),
    F(Dimension.TEMPERATURE, "1", "F", "°F"),
    PERCENT(Dimension.SHARE, "1", "%"),
    MIN(Dimension.TIME, "1", "min", "minutes", "minute"),
    H(Dimension.TIME, "60", "h", "hours", "hour"),
    DAY(Dimension.TIME, "1440", "days", "day", "d"),
    G_CM3(Dimension.DENSITY, "1", "g/cm3", "g/cm³");

    private final Dimension dimension;
    private final BigDecimal factor;

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> spellings;

    Unit(Dimension dimension, String factor, String... spellings) {
        this.dimension = dimension;
        this.factor = new BigDecimal(factor);
        this.spellings = List.of(spellings);
    }

    public Dimension dimension() {
        return dimension;
    }

    public BigDecimal factor() {
        return factor;
    }

    public String symbol() {
        return spellings.get(0);
    }

    /** The unit spelt so; exact case first, because C and F, L and l are typed both ways. */
    static Optional<Unit> spelt(String text) {
        return Arrays.stream(values())
                .filter(unit -> unit.spellings.contains(text))
                .findFirst()
                .or(() -> Arrays.stream(values())
                        .filter(unit -> unit.spellings.stream().anyMatch(s -> fold(s).equals(fold(text))))
                        .findFirst());
    }

    private static String fold(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}

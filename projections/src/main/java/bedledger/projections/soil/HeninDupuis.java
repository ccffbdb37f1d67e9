package bedledger.projections.soil;

import bedledger.projections.tables.Parameters;

/**
 * The classic balance of Hénin and Dupuis (1945), from memory: {@code dM/dt = k1 m - k2 M}, organic matter in t/ha.
 *
 * <p>k2 after Rémy and Marin-Laflèche (1974): {@code 1200 * 0.2 (T - 5) / ((A + 200) (0.3 Ca + 200))}; the more clay, the slower.
 */
public final class HeninDupuis {
    private final Parameters table;

    public HeninDupuis(Parameters table) {
        this.table = table;
    }

    private double value(String name) {
        return table.value("Henin-Dupuis", name);
    }

    /** k2, per year, by g clay/kg, g CaCO3/kg and the mean air temperature in °C; nothing at 5 °C and below. */
    public double rate(double clay, double carbonate, double celsius) {
        return value("decay factor")
                * value("temperature slope")
                * Math.max(0, celsius - value("temperature from"))
                / ((clay + value("clay offset")) * (value("carbonate weight") * carbonate + value("carbonate offset")));
    }

    /** t organic matter/ha after some years of so much humus formed a year. */
    public double matter(double initial, double formed, double rate, double years) {
        double gone = -Math.expm1(-rate * years);
        double gained = rate == 0 ? formed * years : formed / rate * gone;
        return initial * (1 - gone) + gained;
    }

    /** t organic matter/ha in the end. */
    public double limit(double formed, double rate) {
        return formed / rate;
    }
}

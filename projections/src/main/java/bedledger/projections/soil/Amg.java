package bedledger.projections.soil;

import bedledger.projections.tables.Parameters;

/**
 * AMGv2 (Clivot et al. 2019): a stable part of the carbon that rests, an active part that mineralises by a rate k.
 *
 * <p>{@code QC(t) = QCs + QCa0 e^(-kt) + (m/k)(1 - e^(-kt))}; stocks in t C/ha, m in humified t C/ha a year, k per year.
 */
public final class Amg {
    private static final double MILLIMETRES_IN_A_METRE = 1000;

    private final Parameters table;

    public Amg(Parameters table) {
        this.table = table;
    }

    private double value(String name) {
        return table.value("AMGv2", name);
    }

    /** By the mean air temperature of the year, °C; nothing in a year of frost. */
    public double warmth(double celsius) {
        double span = value("warmth span");
        double slope = value("warmth slope");
        return celsius <= 0 ? 0 : span / (1 + (span - 1) * Math.exp(-slope * (celsius - value("warmth reference"))));
    }

    /** By rain and irrigation less potential evapotranspiration, mm a year. */
    public double water(double millimetres) {
        return 1 / (1 + value("water weight") * Math.exp(-value("water slope") * millimetres / MILLIMETRES_IN_A_METRE));
    }

    /** By clay, g/kg. */
    public double clay(double grams) {
        return Math.exp(-value("clay slope") * grams);
    }

    /** By carbonate, g CaCO3/kg. */
    public double carbonate(double grams) {
        return 1 / (1 + value("carbonate slope") * grams);
    }

    public double acidity(double ph) {
        double away = ph - value("pH optimum");
        return Math.exp(-value("pH slope") * away * away);
    }

    /** By the soil's C:N. */
    public double ratio(double carbonToNitrogen) {
        double away = carbonToNitrogen - value("C:N optimum");
        return value("C:N weight") * Math.exp(-value("C:N slope") * away * away) + value("C:N floor");
    }

    /** The share of the active carbon that mineralises, per year. */
    public double rate(Site site) {
        return value("potential mineralisation")
                * warmth(site.celsius())
                * water(site.water())
                * clay(site.clay())
                * carbonate(site.carbonate())
                * acidity(site.ph())
                * ratio(site.carbonToNitrogen());
    }

    /** What k depends on: mean air °C, mm of rain and irrigation less evapotranspiration, g clay/kg, g CaCO3/kg, pH, C:N. */
    public record Site(
            double celsius, double water, double clay, double carbonate, double ph, double carbonToNitrogen) {}

    /** The part of a stock that rests, where the land has long been under arable crops. */
    public double stable(double stock) {
        return value("stable share") * stock;
    }

    /** t C/ha after some years of the same input. */
    public double stock(double initial, double humified, double rate, double years) {
        double stable = stable(initial);
        double gone = -Math.expm1(-rate * years);
        double gained = rate == 0 ? humified * years : humified / rate * gone;
        return stable + (initial - stable) * (1 - gone) + gained;
    }

    /** t C/ha in the end: the first stock's stable part and what the input holds up. */
    public double limit(double initial, double humified, double rate) {
        return stable(initial) + humified / rate;
    }

    /** Carbon that is breathed out of the active part meanwhile, t/ha. */
    public double mineralised(double initial, double humified, double rate, double years) {
        double active = initial - stable(initial);
        double gone = -Math.expm1(-rate * years);
        return active * gone + humified * (years - gone / rate);
    }
}

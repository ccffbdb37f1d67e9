package bedledger.projections.soil;

import bedledger.projections.tables.Parameters;

/**
 * ICBM (Andrén and Kätterer 1997): a young pool fed by the input, an old pool fed by what of the young one becomes humus.
 *
 * <p>{@code dY/dt = i - k1 r Y}, {@code dO/dt = h k1 r Y - k2 r O}, in closed form; stocks in kg C/m², i in kg C/m² a year, r 1 for
 * climate and soil of Ultuna.
 */
public final class Icbm {
    private final double youngDecay;
    private final double oldDecay;

    public Icbm(Parameters table) {
        youngDecay = table.value("ICBM", "young decay");
        oldDecay = table.value("ICBM", "old decay");
    }

    /** Input a year, share that becomes humus, climate and soil. */
    public record Setting(double input, double humified, double climate) {}

    /** Young and old carbon, kg/m². */
    public record Pools(double young, double old) {
        public double total() {
            return young + old;
        }
    }

    /** What this input holds up in the end. */
    public Pools steady(Setting setting) {
        return new Pools(
                setting.input() / (youngDecay * setting.climate()),
                setting.humified() * setting.input() / (oldDecay * setting.climate()));
    }

    /** After some years of the same input. */
    public Pools after(Pools start, Setting setting, double years) {
        double fast = youngDecay * setting.climate();
        double slow = oldDecay * setting.climate();
        Pools steady = steady(setting);
        double between = setting.humified() * (fast * start.young() - setting.input()) / (slow - fast);
        double young = steady.young() + (start.young() - steady.young()) * Math.exp(-fast * years);
        double old = steady.old()
                + (start.old() - steady.old() - between) * Math.exp(-slow * years)
                + between * Math.exp(-fast * years);
        return new Pools(young, old);
    }

    /** A stock parted so that the young pool is what the input holds up, as far as the stock goes. */
    Pools parted(double stock, Setting setting) {
        double young = Math.min(stock, steady(setting).young());
        return new Pools(young, stock - young);
    }
}

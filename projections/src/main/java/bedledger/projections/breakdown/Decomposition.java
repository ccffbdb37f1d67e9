package bedledger.projections.breakdown;

/** The two factors of a decomposition day, 0 to 1, in the form of the USDA-ARS Wind Erosion Prediction System. */
public final class Decomposition {
    private static final double OPTIMUM = Constants.get("optimum temperature").value();
    private static final double WETTING = Constants.get("wetting").value();
    private static final double CARRY_OVER = Constants.get("carry-over").value();
    private static final double DRY_DAYS = Constants.get("dry days").value();

    private Decomposition() {}

    /** Temperature factor of a daily mean in °C: 1 at the optimum of 32 °C, 0 below freezing and above 45.25 °C (after Stroo et al. 1989). */
    public static double temperature(double celsius) {
        if (celsius <= 0) {
            return 0;
        }
        double square = celsius * celsius;
        double optimum = OPTIMUM * OPTIMUM;
        return Math.min(1, Math.max(0, (2 * square * optimum - square * square) / (optimum * optimum)));
    }

    /**
     * Water factor of standing residue.
     *
     * @param millimetres rain and watering of the day
     * @param yesterday the factor of the day before
     * @param dryDays days without water up to and with this one
     */
    public static double standingWater(double millimetres, double yesterday, int dryDays) {
        if (millimetres > 0) {
            return Math.min(1, millimetres / WETTING + CARRY_OVER * yesterday);
        }
        return dryDays >= DRY_DAYS ? 0 : CARRY_OVER * yesterday;
    }

    /** The share of the ground covered by a dry mass in kg/m², at a cover factor in m²/kg. */
    public static double cover(double coverFactor, double kilogramsPerSquareMetre) {
        return -Math.expm1(-coverFactor * kilogramsPerSquareMetre);
    }
}

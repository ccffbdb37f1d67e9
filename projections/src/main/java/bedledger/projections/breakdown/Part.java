package bedledger.projections.breakdown;

import java.util.Arrays;
import java.util.List;

/** Leaves or stalks of one piece as they go, of a mass of 1 at first: standing, on the ground, worked in. */
final class Part {
    /** Share still there at the end of each day from the first on. */
    final double[] left;
    /** Share still standing or on the ground. */
    final double[] onTop;

    private final BedDays days;
    private final double rate;
    private final int toughness;
    private final Assumptions assumed;
    private double standing = 1;
    private double flat;
    private double buried;
    private double aged;

    /**
     * Lets it go from its first day.
     *
     * @param first index of the day it was left on the bed; that day's work counts, its weather does not
     * @param last index of the last day wanted
     */
    Part(BedDays days, double rate, int toughness, int first, int last, Assumptions assumed) {
        this.days = days;
        this.rate = rate;
        this.toughness = toughness;
        this.assumed = assumed;
        this.left = new double[last - first + 1];
        this.onTop = new double[last - first + 1];
        double gone = Constants.get("gone").value();
        for (int at = first; at <= last; at++) {
            days.works(at).forEach(this::work);
            if (at > first) {
                rot(at);
            }
            left[at - first] = standing + flat + buried;
            onTop[at - first] = standing + flat;
            if (Double.isNaN(left[at - first])) {
                Arrays.fill(left, at - first, left.length, Double.NaN);
                Arrays.fill(onTop, at - first, left.length, Double.NaN);
                return;
            }
            if (left[at - first] < gone) {
                return;
            }
        }
    }

    private void work(Work work) {
        double falls = standing * work.flattens(toughness, assumed);
        standing -= falls;
        flat += falls;
        double goesIn = flat * work.buries(toughness);
        flat -= goesIn;
        buried += goesIn;
    }

    private void rot(int at) {
        Climate climate = days.climate;
        double rain = days.standingWater[at];
        double wet = Double.isNaN(rain) ? assumed.of(Constants.RAIN_UNKNOWN) : rain;
        boolean tarp = days.covered[at];
        double warmth = climate.soil[at] + (tarp ? assumed.of(Constants.WARMING) : 0);
        double onTheGround =
                tarp ? assumed.of(Constants.UNDER_TARP) : Math.max(assumed.of(Constants.ON_THE_GROUND), wet);
        double inTheSoil = tarp ? assumed.of(Constants.UNDER_TARP) : assumed.of(Constants.WORKED_IN);
        double upright = Math.min(Decomposition.temperature(climate.air[at]), wet);
        double soil = Decomposition.temperature(warmth);
        standing *= 1 - Math.min(1, rate * upright);
        flat *= 1 - Math.min(1, rate * Math.min(soil, onTheGround));
        buried *= 1 - Math.min(1, rate * Math.min(soil, inTheSoil));
        aged += upright;
        if (aged > assumed.of(Constants.STEM_FALL)) {
            flat += standing;
            standing = 0;
        }
    }

    /** What moves it, beside its rate. */
    static List<Parameter> parameters() {
        return List.of(
                Constants.WARMING,
                Constants.UNDER_TARP,
                Constants.ON_THE_GROUND,
                Constants.WORKED_IN,
                Constants.RAIN_UNKNOWN,
                Constants.STEM_FALL,
                Constants.get("flattened by the flail"),
                Constants.get("flattened by a crimper"));
    }
}

package bedledger.projections.soil;

import bedledger.projections.tables.Parameters;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.TDistribution;

/** The least difference that two samplings can detect (two-sample power formula, Student's t). */
public final class Detection {
    private final double falseAlarm;
    private final double power;

    public Detection(Parameters table) {
        falseAlarm = table.value("detection", "risk of a false alarm");
        power = table.value("detection", "power");
    }

    /**
     * In the unit of the deviation; empty where no sampling was repeated, so that nobody knows how much samples differ by chance.
     *
     * @param deviation standard deviation of samples taken at one time
     */
    public OptionalDouble leastDifference(double deviation, int first, int later) {
        int freedom = first + later - 2;
        if (first < 1 || later < 1 || freedom < 1 || !(deviation > 0)) {
            return OptionalDouble.empty();
        }
        TDistribution student = TDistribution.of(freedom);
        double certain =
                student.inverseCumulativeProbability(1 - falseAlarm / 2) + student.inverseCumulativeProbability(power);
        return OptionalDouble.of(deviation * Math.sqrt(1.0 / first + 1.0 / later) * certain);
    }

    public double falseAlarm() {
        return falseAlarm;
    }

    public double power() {
        return power;
    }
}

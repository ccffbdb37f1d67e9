package bedledger.projections.soil;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The first and the last sampling of a bed held against each other. */
final class Comparison {
    /** Samplings further apart in the year than this are of different seasons; a judgement. */
    private static final int DAYS_APART_IN_THE_YEAR = 60;

    private static final int DAYS_OF_A_YEAR = 365;

    private Comparison() {}

    static Optional<CarbonChange> change(List<Sampling> samplings, Detection detection) {
        List<Sampling> known = samplings.stream()
                .filter(each -> !each.layers().isEmpty())
                .filter(each -> each.layers().get(0).carbon().isPresent())
                .toList();
        if (known.size() < 2) {
            return Optional.empty();
        }
        Sampling first = known.get(0);
        Sampling last = known.get(known.size() - 1);
        SampledLayer one = first.layers().get(0);
        SampledLayer two = last.layers().get(0);
        boolean comparable = first.how().equals(last.how())
                && !first.how().contains("null")
                && sameDepth(one, two)
                && sameTime(first, last);
        boolean several = first.isCompositeOfBeds() || last.isCompositeOfBeds();
        OptionalDouble least = pooled(one, two);
        return Optional.of(new CarbonChange(
                two.carbon().orElseThrow().best() - one.carbon().orElseThrow().best(),
                least.isEmpty() ? least : detection.leastDifference(least.getAsDouble(), one.samples(), two.samples()),
                comparable,
                several));
    }

    private static boolean sameDepth(SampledLayer one, SampledLayer two) {
        return one.from() == two.from() && one.to() == two.to();
    }

    private static boolean sameTime(Sampling one, Sampling two) {
        int apart = Math.abs(one.day().getDayOfYear() - two.day().getDayOfYear());
        return Math.min(apart, DAYS_OF_A_YEAR - apart) <= DAYS_APART_IN_THE_YEAR;
    }

    /** Both samplings must have been repeated: what samples differ by in one year says nothing of another day's. */
    private static OptionalDouble pooled(SampledLayer one, SampledLayer two) {
        if (one.deviation().isEmpty() || two.deviation().isEmpty()) {
            return OptionalDouble.empty();
        }
        double first = one.deviation().getAsDouble();
        double second = two.deviation().getAsDouble();
        int freedom = one.samples() + two.samples() - 2;
        return OptionalDouble.of(
                Math.sqrt(((one.samples() - 1) * first * first + (two.samples() - 1) * second * second) / freedom));
    }

    static Optional<EquivalentMass> equivalent(List<Sampling> samplings) {
        List<Profile> profiles =
                samplings.stream().flatMap(each -> each.profile().stream()).toList();
        return profiles.size() < 2
                ? Optional.empty()
                : Optional.of(EquivalentMass.of(profiles.get(0), profiles.get(profiles.size() - 1)));
    }
}

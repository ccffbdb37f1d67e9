package bedledger.projections.breakdown;

import bedledger.projections.breakdown.Rates.Rate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * The rates of one group of residue after the farm's own looks.
 *
 * <p>Bayes on a grid: how many times the table's rate the farm's leaves and stalks go, each with a two-sided log-normal prior
 * whose mode is the table's value and whose 95 % is the table's range; each look is independent and normal in the share of
 * mass left. The rate used is the posterior's mode, its range the middle 95 %. Judgement: the prior, the errors, and that
 * two looks at one bed are independent.
 *
 * @param leaves how many looks told of leaves
 * @param stalks how many told of stalks
 * @param looks what was seen, latest first
 */
public record FarmRate(ResidueGroup group, int leaves, int stalks, List<String> looks, Rates rates) {
    /** The method in a sentence, for reports. */
    public static final String METHOD =
            "The farm's own looks correct the table's rate (Bayes on a grid; prior: the table's range as 95 % of a"
                    + " log-normal; a look is a share of mass with the error of the looks table; looks are taken as independent: judgement)";

    private static final double STEP = 0.05;
    private static final int HALF = 60;
    private static final int POINTS = 2 * HALF + 1;
    private static final double NINETY_FIVE = 1.96;

    public FarmRate {
        looks = List.copyOf(looks);
    }

    static FarmRate of(ResidueGroup group, List<Look> looks) {
        double[][] posterior = posterior(group, looks);
        int leaves = count(looks, Look.Of.LEAVES);
        int stalks = count(looks, Look.Of.STALKS);
        double leaf = Constants.get("leaf factor").value();
        Rates table = Rates.ofTable(group);
        Rate leafRate = leaves == 0 ? table.leaves() : rate(group, "leaves", leaf, sums(posterior, true), leaves);
        Rate stalkRate = stalks == 0 ? table.stalks() : rate(group, "stalks", 1, sums(posterior, false), stalks);
        return new FarmRate(
                group, leaves, stalks, looks.stream().map(Look::inWords).toList(), new Rates(leafRate, stalkRate));
    }

    private static int count(List<Look> looks, Look.Of of) {
        return (int) looks.stream()
                .filter(each -> each.of() == of || each.of() == Look.Of.BOTH)
                .count();
    }

    /** Log of the posterior, leaves by stalks. */
    private static double[][] posterior(ResidueGroup group, List<Look> looks) {
        double[][] log = new double[POINTS][POINTS];
        for (int leaf = 0; leaf < POINTS; leaf++) {
            for (int stalk = 0; stalk < POINTS; stalk++) {
                log[leaf][stalk] = prior(group, leaf) + prior(group, stalk);
            }
        }
        looks.forEach(look -> add(group, look, log));
        return log;
    }

    private static double prior(ResidueGroup group, int point) {
        var range = Objects.requireNonNull(group.rate().range(), "every rate of the table has a range");
        double times = (point - HALF) * STEP;
        double end = times < 0 ? range.low() : range.high();
        double spread = Math.max(
                Constants.get("least spread").value(),
                Math.abs(Math.log(end / group.rate().value())) / NINETY_FIVE);
        return -times * times / (2 * spread * spread);
    }

    private static void add(ResidueGroup group, Look look, double[][] log) {
        double[] leaves = modelled(
                look, Constants.get("leaf factor").value() * group.rate().value());
        double[] stalks = modelled(look, group.rate().value());
        double leafShare = look.piece().leafShare.value();
        for (int leaf = 0; leaf < POINTS; leaf++) {
            for (int stalk = 0; stalk < POINTS; stalk++) {
                double share = switch (look.of()) {
                    case LEAVES -> leaves[leaf];
                    case STALKS -> stalks[stalk];
                    case BOTH -> leafShare * leaves[leaf] + (1 - leafShare) * stalks[stalk];
                };
                log[leaf][stalk] += look.logLikelihood(share);
            }
        }
    }

    /** The share of a part that the model would have seen, for each point of the grid. */
    private static double[] modelled(Look look, double rate) {
        double[] shares = new double[POINTS];
        for (int point = 0; point < POINTS; point++) {
            Part part = look.piece().partTo(look.day(), rate * Math.exp((point - HALF) * STEP));
            double[] course = look.of() == Look.Of.BOTH ? part.onTop : part.left;
            shares[point] = course[course.length - 1];
        }
        return shares;
    }

    private static double[] sums(double[][] log, boolean leaves) {
        double top = Arrays.stream(log).flatMapToDouble(Arrays::stream).max().orElse(0);
        double[] sums = new double[POINTS];
        for (int leaf = 0; leaf < POINTS; leaf++) {
            for (int stalk = 0; stalk < POINTS; stalk++) {
                sums[leaves ? leaf : stalk] += Math.exp(log[leaf][stalk] - top);
            }
        }
        return sums;
    }

    private static Rate rate(ResidueGroup group, String part, double factor, double[] density, int looks) {
        int mode = 0;
        for (int point = 1; point < POINTS; point++) {
            mode = density[point] > density[mode] ? point : mode;
        }
        double table = group.rate().value() * factor;
        double least = NINETY_FIVE * Constants.get("least spread").value();
        double low = Math.min(quantile(density, 0.025), (mode - HALF) * STEP - least);
        double high = Math.max(quantile(density, 0.975), (mode - HALF) * STEP + least);
        Parameter own = Going.own(
                group.name() + " rate of " + part,
                table * Math.exp((mode - HALF) * STEP),
                table * Math.exp(low),
                table * Math.exp(high),
                looks);
        return new Rate(own, 1);
    }

    private static double quantile(double[] density, double share) {
        double wanted = share * Arrays.stream(density).sum();
        double sum = 0;
        for (int point = 0; point < POINTS; point++) {
            sum += density[point];
            if (sum >= wanted) {
                return (point - HALF) * STEP;
            }
        }
        return HALF * STEP;
    }

    /** How many times the table's rate leaves and stalks go here, and on how many looks that rests. */
    public List<String> words() {
        List<String> said = new ArrayList<>();
        double leaf = Constants.get("leaf factor").value();
        if (leaves > 0) {
            said.add(words("leaves", rates.leaves().parameter(), leaf, leaves));
        }
        if (stalks > 0) {
            said.add(words("stalks", rates.stalks().parameter(), 1, stalks));
        }
        return said;
    }

    private String words(String part, Parameter own, double factor, int count) {
        double table = group.rate().value() * factor;
        var range = Objects.requireNonNull(own.range());
        return String.format(
                java.util.Locale.ROOT,
                "%s %s go %.1f times as fast here as in the table (%.1f to %.1f), on %d %s",
                group.name(),
                part,
                own.value() / table,
                range.low() / table,
                range.high() / table,
                count,
                count == 1 ? "look" : "looks");
    }
}

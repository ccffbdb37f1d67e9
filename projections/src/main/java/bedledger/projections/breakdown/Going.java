package bedledger.projections.breakdown;

import bedledger.language.BedId;
import bedledger.projections.estimate.Deviation;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.Grounds;
import bedledger.projections.returned.Return;
import bedledger.projections.tables.Citation;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Range;
import bedledger.projections.tables.Status;
import bedledger.projections.tables.Tables;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** One piece of residue on one bed, on its way to nothing. */
final class Going {
    final Return piece;
    final BedId bed;
    final Estimate mass;
    final ResidueGroup group;
    final Parameter leafShare;
    final BedDays days;
    final int first;
    private final Rates rates;
    private final int last;
    private final List<Parameter> parameters = new ArrayList<>();
    private final Map<Assumptions, double[][]> courses = new HashMap<>();

    Going(Return piece, BedId bed, ResidueGroup group, Rates rates, Tables tables, BedDays days) {
        this.piece = piece;
        this.bed = bed;
        this.mass = piece.on(bed).dry().orElseThrow();
        this.group = group;
        this.rates = rates;
        this.leafShare = leafShare(piece.what(), tables);
        this.days = days;
        this.first = days.climate.index(piece.day());
        this.last = days.climate.air.length - 1;
        parameters.addAll(Part.parameters());
        parameters.add(leafShare);
        parameters.add(rates.leaves().parameter());
        if (!rates.stalks().parameter().equals(rates.leaves().parameter())) {
            parameters.add(rates.stalks().parameter());
        }
    }

    static Parameter leafShare(String crop, Tables tables) {
        return tables.coefficient(crop, Quantity.LEAF_SHARE)
                .map(each -> new Parameter(each.key(), each.value(), each.range(), each.citation(), each.note()))
                .orElseGet(() -> Constants.get("leaf share where none is known"));
    }

    /** What its course rests on. */
    List<Parameter> parameters() {
        return parameters;
    }

    /** Share left at the end of a day; not a number where the weather up to then is not known. */
    double left(int at, Assumptions assumed) {
        return course(assumed)[0][at - first];
    }

    /** Share standing or lying on the ground at the end of a day. */
    double onTop(int at, Assumptions assumed) {
        return course(assumed)[1][at - first];
    }

    private double[][] course(Assumptions assumed) {
        boolean bears = parameters.stream().anyMatch(each -> each.name().equals(assumed.moved()));
        return courses.computeIfAbsent(bears ? assumed : Assumptions.BEST, this::walk);
    }

    private double[][] walk(Assumptions assumed) {
        double leaf = assumed.of(leafShare);
        Part leaves = part(rates.leaves().under(assumed), assumed);
        Part stalks = part(rates.stalks().under(assumed), assumed);
        double[][] course = new double[2][leaves.left.length];
        for (int at = 0; at < leaves.left.length; at++) {
            course[0][at] = leaf * leaves.left[at] + (1 - leaf) * stalks.left[at];
            course[1][at] = leaf * leaves.onTop[at] + (1 - leaf) * stalks.onTop[at];
        }
        return course;
    }

    Part part(double rate, Assumptions assumed) {
        return new Part(days, rate, group.toughness(), first, last, assumed);
    }

    /** The same up to a day only, at some rate: for the looks. */
    Part partTo(int at, double rate) {
        return new Part(days, rate, group.toughness(), first, at, Assumptions.BEST);
    }

    Rates rates() {
        return rates;
    }

    /** The share left as an estimate. */
    Estimate shareLeft(int at) {
        return estimate("kg/kg", parameters, assumed -> left(at, assumed));
    }

    /** The share on top as an estimate. */
    Estimate shareOnTop(int at) {
        return estimate("kg/kg", parameters, assumed -> onTop(at, assumed));
    }

    /** A figure worked out again with each parameter at either end. */
    static Estimate estimate(String unit, List<Parameter> parameters, ToDoubleFunction<Assumptions> figure) {
        double best = figure.applyAsDouble(Assumptions.BEST);
        SortedMap<String, Deviation> moved = new TreeMap<>();
        TreeSet<Citation> cited = new TreeSet<>();
        for (Parameter each : parameters) {
            double low = figure.applyAsDouble(new Assumptions(each.name(), Parameter.End.LOW)) - best;
            double high = figure.applyAsDouble(new Assumptions(each.name(), Parameter.End.HIGH)) - best;
            moved.put(each.name(), new Deviation(low, high, each.range() != null, ""));
            if (low != 0 || high != 0) {
                cited.add(each.citation());
            }
        }
        return new Estimate(
                best, unit, moved, new Grounds(new TreeSet<>(), cited, new TreeSet<>(), new TreeSet<>()), true);
    }

    /** A parameter that the farm's own looks gave. */
    static Parameter own(String name, double value, double low, double high, int looks) {
        return new Parameter(
                name,
                value,
                new Range(low, high),
                new Citation("own looks", "", looks + (looks == 1 ? " look" : " looks"), Status.OWN),
                "");
    }
}

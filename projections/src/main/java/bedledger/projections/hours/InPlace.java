package bedledger.projections.hours;

import bedledger.language.BedId;
import bedledger.language.BedWork.ResidueFlailed;
import bedledger.language.BedWork.ResidueHauledOff;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.SampleMean;
import bedledger.projections.history.BedAreas;
import bedledger.projections.history.Flip;
import bedledger.projections.history.Flips;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What flailing residue in place saved against hauling it off, from the farm's own timed acts of both; never from elsewhere.
 *
 * @param hauling the farm's own haul-offs
 * @param flailing the farm's own flailings
 * @param flips how many flips left the residue in place: flailed, nothing hauled off
 * @param squareMetres the bed tops of those
 * @param hauled person-minutes that hauling off would have taken there; empty without a timed haul-off
 * @param saved those less what flailing takes; empty unless both are timed
 * @param missing what is wanting
 */
public record InPlace(
        OwnRate hauling,
        OwnRate flailing,
        int flips,
        double squareMetres,
        Optional<Estimate> hauled,
        Optional<Estimate> saved,
        List<String> missing) {
    public InPlace {
        missing = List.copyOf(missing);
    }

    /** For the flips whose residue was flailed from one day to another; the rates are of everything done by the last day. */
    public static InPlace of(Farm farm, LocalDate from, LocalDate to, List<BedId> beds) {
        BedAreas areas = new BedAreas(farm);
        OwnRate hauling = rate(farm, areas, to, ResidueHauledOff.class, "haul");
        OwnRate flailing = rate(farm, areas, to, ResidueFlailed.class, "flail");
        int flips = 0;
        double area = 0;
        for (BedId bed : beds.isEmpty() ? farm.beds() : beds) {
            for (Flip flip : Flips.of(farm, bed, areas, to)) {
                if (flailedInPlace(flip, from)) {
                    flips++;
                    area += areas.squareMetres(bed, flip.from());
                }
            }
        }
        double squareMetres = area;
        Optional<Estimate> hauled = hauling.perSquareMetre().map(each -> minutes(each, squareMetres));
        Optional<Estimate> saved =
                hauled.flatMap(each -> flailing.perSquareMetre().map(rate -> each.minus(minutes(rate, squareMetres))));
        return new InPlace(hauling, flailing, flips, area, hauled, saved, missing(hauling, flailing));
    }

    private static boolean flailedInPlace(Flip flip, LocalDate from) {
        boolean hauled = flip.steps().stream().anyMatch(step -> step.entry().fact() instanceof ResidueHauledOff);
        return !hauled
                && flip.steps().stream()
                        .filter(step -> step.entry().fact() instanceof ResidueFlailed)
                        .anyMatch(step -> !step.entry().head().doneOn().isBefore(from));
    }

    private static Estimate minutes(Estimate perSquareMetre, double squareMetres) {
        return Estimate.exact(squareMetres, "min").times(perSquareMetre);
    }

    private static List<String> missing(OwnRate hauling, OwnRate flailing) {
        List<String> missing = new ArrayList<>();
        for (OwnRate rate : List.of(hauling, flailing)) {
            if (rate.timed() == 0) {
                String none = rate.acts() == 0
                        ? "no such act is on record"
                        : "none of its " + rate.acts() + " on record has people and minutes";
                missing.add("how long this farm takes to " + rate.operation() + ": " + none);
            }
        }
        return missing;
    }

    private static OwnRate rate(Farm farm, BedAreas areas, LocalDate to, Class<? extends Fact> kind, String operation) {
        List<Entry> acts = farm.ofKind(kind).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(to))
                .toList();
        List<Double> byArea = new ArrayList<>();
        List<Double> byWeight = new ArrayList<>();
        SortedSet<Long> timed = new TreeSet<>();
        for (Entry entry : acts) {
            double area = area(entry, areas);
            double kilograms = entry.fact() instanceof ResidueHauledOff haul && haul.weight() != null
                    ? haul.weight().grams() / 1000
                    : 0;
            WorkSteps.minutes(entry).filter(minutes -> area > 0).ifPresent(minutes -> {
                byArea.add(minutes / area);
                timed.add(entry.number());
            });
            WorkSteps.minutes(entry)
                    .filter(minutes -> kilograms > 0)
                    .ifPresent(minutes -> byWeight.add(minutes / kilograms));
        }
        return new OwnRate(
                operation,
                acts.size(),
                byArea.size(),
                mean(byArea, "min/m²", operation, timed),
                byWeight.size(),
                mean(byWeight, "min/kg", operation, timed),
                timed);
    }

    private static double area(Entry entry, BedAreas areas) {
        return entry.head().area() == null
                ? areas.squareMetres(entry)
                : entry.head().area().squareMetres();
    }

    private static Optional<Estimate> mean(List<Double> each, String unit, String operation, SortedSet<Long> entries) {
        if (each.isEmpty()) {
            return Optional.empty();
        }
        SampleMean mean = SampleMean.of(each, Tables.sampling().confidence());
        String name = "own time to " + operation + ", " + unit;
        Estimate rate = mean.halfWidth().isEmpty()
                ? Estimate.measuredWithoutInterval(name, mean.mean(), unit)
                : Estimate.measured(name, mean.mean(), mean.halfWidth().getAsDouble(), unit);
        return Optional.of(rate.clippedAtZero()
                .by("mean of the farm's own acts with Student's t interval")
                .behind(entries));
    }
}

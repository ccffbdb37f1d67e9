package bedledger.projections.estimate;

import bedledger.projections.tables.Coefficient;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Range;
import bedledger.projections.tables.Sampling;
import bedledger.projections.tables.Tables;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Quadrats cut on one bed on one day, with the dry share of their mixed subsample where it was dried.
 *
 * <p>{@code name} is what the doubt of the sample is called, such as "quadrats R1 #52".
 */
public record QuadratSample(String name, List<Quadrat> quadrats, Optional<DryShare> dryShare) {
    public QuadratSample {
        quadrats = List.copyOf(quadrats);
        if (quadrats.isEmpty()) {
            throw new IllegalArgumentException("A sample was refused: " + name + " holds no quadrat.");
        }
    }

    /** Fresh mass in g/m² with its interval. */
    public SampleMean freshPerSquareMetre(Sampling sampling) {
        return SampleMean.of(quadrats.stream().map(Quadrat::gramsPerSquareMetre).toList(), sampling.confidence());
    }

    /**
     * Dry mass on a bed, kg; empty when the dry share was not measured and the table has none for the crop.
     *
     * @param bedSquareMetres the area the quadrats stand for
     */
    public Optional<Estimate> dryOnBed(String crop, double bedSquareMetres, Tables tables) {
        Estimate fresh = freshOnBed(bedSquareMetres, Tables.sampling());
        return dryShare.map(each -> fresh.times(each.value())
                        .by("quadrats: mean fresh mass x dry share as measured x bed area")
                        .noting("the dry share was measured once; its own doubt is not in the interval"))
                .or(() -> tables.coefficient(crop, Quantity.RESIDUE_DRY_SHARE)
                        .map(each -> fresh.times(Estimate.share(each))
                                .by("quadrats: mean fresh mass x dry share from the table x bed area")));
    }

    /** Fresh mass on a bed, kg. */
    public Estimate freshOnBed(double bedSquareMetres, Sampling sampling) {
        SampleMean mean = freshPerSquareMetre(sampling);
        double kilograms = bedSquareMetres / 1000;
        Estimate fresh = mean.halfWidth().isEmpty()
                ? Estimate.measuredWithoutInterval(name, mean.mean(), "kg")
                : Estimate.measured(name, mean.mean(), mean.halfWidth().getAsDouble(), "kg");
        return fresh.clippedAtZero().times(kilograms);
    }

    /** What is unusual: few quadrats, uneven ones, a dry share far from the table's or taken from it. */
    public List<SampleWarning> warnings(String crop, double bedSquareMetres, Tables tables, MassUnit unit) {
        Sampling sampling = Tables.sampling();
        List<SampleWarning> words = new ArrayList<>();
        if (quadrats.size() < sampling.fewestQuadrats()) {
            words.add(new SampleWarning(
                    SampleWarning.Kind.FEW_QUADRATS,
                    "n = " + quadrats.size() + "; at least " + Math.round(sampling.fewestQuadrats())
                            + " spots are advised"));
        }
        freshPerSquareMetre(sampling).coefficientOfVariation().ifPresent(variation -> {
            if (variation > sampling.widestVariation()) {
                words.add(new SampleWarning(
                        SampleWarning.Kind.UNEVEN,
                        "the spots differ by " + percent(variation) + " (coefficient of variation, above "
                                + percent(sampling.widestVariation()) + ": judgement)"));
            }
        });
        tables.coefficient(crop, Quantity.RESIDUE_DRY_SHARE)
                .flatMap(table -> aboutDryShare(table, bedSquareMetres, sampling, unit))
                .ifPresent(words::add);
        return List.copyOf(words);
    }

    private Optional<SampleWarning> aboutDryShare(
            Coefficient table, double bedSquareMetres, Sampling sampling, MassUnit unit) {
        if (dryShare.isEmpty()) {
            return Optional.of(new SampleWarning(
                    SampleWarning.Kind.DRY_SHARE_FROM_TABLE,
                    "no dry share was measured; the table's " + percent(table.value()) + " is used"));
        }
        Range range = table.range();
        double measured = dryShare.get().value();
        if (range == null || range.holds(measured)) {
            return Optional.empty();
        }
        Estimate atTable = freshOnBed(bedSquareMetres, sampling).times(table.value());
        String cause = measured > range.high() ? ": soil in the sample, or half-dried?" : ": washed or wet?";
        return Optional.of(new SampleWarning(
                SampleWarning.Kind.DRY_SHARE_OUTSIDE_TABLE,
                percent(measured) + " dry is outside the table's " + percent(range.low()) + " to "
                        + percent(range.high()) + cause + " At " + percent(table.value()) + " it would be "
                        + Figures.three(atTable.best() / unit.kilograms()) + " " + unit.name() + " dry"));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", share * 100);
    }
}

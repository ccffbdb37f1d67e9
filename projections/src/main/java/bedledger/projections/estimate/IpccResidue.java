package bedledger.projections.estimate;

import bedledger.projections.tables.IpccClass2006;
import bedledger.projections.tables.IpccClass2019;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Crop residue by the IPCC method, all of it returned: a cross-check for crops the IPCC has, never the estimate itself.
 *
 * <p>Masses in t dry per ha, nitrogen in kg per ha; empty where the publication lacks a figure.
 */
public record IpccResidue(double cropDry, double above, OptionalDouble below, OptionalDouble nitrogen) {
    /** IPCC 2006 Guidelines Vol. 4 Ch. 11 Eq. 11.6 and 11.7A, nothing removed or burnt; no crop leaves nothing. */
    public static IpccResidue by2006(IpccClass2006 row, double freshTonnesPerHectare) {
        double crop = freshTonnesPerHectare * row.dryShare();
        // The intercept would leave residue where no crop was grown.
        double above = crop == 0 ? 0 : crop * row.slope() + row.intercept();
        return with(crop, above, row.belowToAboveGroundBiomass(), row.nitrogenAbove(), row.nitrogenBelow());
    }

    /** IPCC 2019 Refinement Vol. 4 Ch. 11 Eq. 11.6, nothing removed or burnt; empty without a residue ratio. */
    public static Optional<IpccResidue> by2019(IpccClass2019 row, double freshTonnesPerHectare) {
        if (row.residueToCrop().isEmpty()) {
            return Optional.empty();
        }
        double crop = freshTonnesPerHectare * row.dryShare();
        double above = crop * row.residueToCrop().getAsDouble();
        return Optional.of(
                with(crop, above, row.belowToAboveGroundBiomass(), row.nitrogenAbove(), row.nitrogenBelow()));
    }

    private static IpccResidue with(
            double crop, double above, OptionalDouble ratio, double nitrogenAbove, OptionalDouble nitrogenBelow) {
        OptionalDouble below = ratio.isEmpty() ? ratio : OptionalDouble.of((crop + above) * ratio.getAsDouble());
        OptionalDouble nitrogen = below.isEmpty() || nitrogenBelow.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(1000 * (above * nitrogenAbove + below.getAsDouble() * nitrogenBelow.getAsDouble()));
        return new IpccResidue(crop, above, below, nitrogen);
    }
}

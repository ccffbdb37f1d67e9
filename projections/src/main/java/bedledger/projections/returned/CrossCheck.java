package bedledger.projections.returned;

import bedledger.projections.estimate.IpccResidue;
import bedledger.projections.estimate.MassUnit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What the IPCC method gives for the same harvest, before anything was hauled off: beside the estimate, never in place of it.
 *
 * @param name edition and class
 * @param shoots kg dry
 * @param roots kg dry
 * @param nitrogen kg, shoots and roots together
 * @param words the same in a sentence
 */
public record CrossCheck(String name, double shoots, OptionalDouble roots, OptionalDouble nitrogen, String words) {
    static List<CrossCheck> of(String crop, double freshKilograms, double squareMetres, Basis basis) {
        if (squareMetres <= 0) {
            return List.of();
        }
        double hectares = squareMetres / 10_000;
        double tonnesPerHectare = freshKilograms / 1000 / hectares;
        Stream<CrossCheck> first = basis.tables.ipcc2006For(crop).stream()
                .map(row -> named(
                        "IPCC 2006, " + row.name(), IpccResidue.by2006(row, tonnesPerHectare), hectares, basis.unit));
        Stream<CrossCheck> second = basis.tables.ipcc2019For(crop).stream()
                .flatMap(row -> IpccResidue.by2019(row, tonnesPerHectare).stream()
                        .map(residue -> named("IPCC 2019, " + row.name(), residue, hectares, basis.unit)));
        return Stream.concat(first, second).toList();
    }

    private static CrossCheck named(String name, IpccResidue residue, double hectares, MassUnit unit) {
        double shoots = residue.above() * 1000 * hectares;
        OptionalDouble roots = times(residue.below(), 1000 * hectares);
        String below = roots.isEmpty() ? "" : ", roots " + unit.words(roots.getAsDouble()) + " dry";
        return new CrossCheck(
                name,
                shoots,
                roots,
                times(residue.nitrogen(), hectares),
                name + ": shoots " + unit.words(shoots) + " dry" + below + " (a cross-check only)");
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isEmpty() ? value : OptionalDouble.of(value.getAsDouble() * factor);
    }
}

package bedledger.projections.returned;

import bedledger.projections.estimate.IpccResidue;
import bedledger.projections.tables.Tables;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What the IPCC method gives for the same harvest, before anything was hauled off: beside the estimate, never in place of it.
 *
 * @param name edition and class
 * @param shoots kg dry
 * @param roots kg dry
 * @param nitrogen kg, shoots and roots together
 */
public record CrossCheck(String name, double shoots, OptionalDouble roots, OptionalDouble nitrogen) {
    static List<CrossCheck> of(String crop, double freshKilograms, double squareMetres, Tables tables) {
        if (squareMetres <= 0) {
            return List.of();
        }
        double hectares = squareMetres / 10_000;
        double tonnesPerHectare = freshKilograms / 1000 / hectares;
        Stream<CrossCheck> first = tables.ipcc2006For(crop).stream()
                .map(row -> named("IPCC 2006, " + row.name(), IpccResidue.by2006(row, tonnesPerHectare), hectares));
        Stream<CrossCheck> second = tables.ipcc2019For(crop).stream()
                .flatMap(row -> IpccResidue.by2019(row, tonnesPerHectare).stream()
                        .map(residue -> named("IPCC 2019, " + row.name(), residue, hectares)));
        return Stream.concat(first, second).toList();
    }

    private static CrossCheck named(String name, IpccResidue residue, double hectares) {
        return new CrossCheck(
                name,
                residue.above() * 1000 * hectares,
                times(residue.below(), 1000 * hectares),
                times(residue.nitrogen(), hectares));
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isEmpty() ? value : OptionalDouble.of(value.getAsDouble() * factor);
    }

    public String words() {
        String below = roots.isEmpty() ? "" : String.format(Locale.ROOT, ", roots %.2f kg dry", roots.getAsDouble());
        return String.format(Locale.ROOT, "%s: shoots %.2f kg dry%s (a cross-check only)", name, shoots, below);
    }
}

package bedledger.projections.soil;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Matter;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.SourceKind;
import bedledger.projections.returned.Sum;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * The carbon that the record says went back to a bed in one season, or in several; kg.
 *
 * @param carbon by source, and of how many pieces it is not known
 * @param all sources together
 * @param amg what of it becomes humus by AMGv2
 * @param icbm what of it becomes humus by ICBM
 * @param henin kg organic matter formed, by Hénin and Dupuis
 */
public record CarbonInput(
        String season, Map<SourceKind, Sum> carbon, Sum all, Sum amg, Sum icbm, Sum henin, SortedSet<Long> entries) {
    /** A piece, and what of it went to the bed. */
    record Part(Return piece, Matter matter) {}

    public CarbonInput {
        carbon = Collections.unmodifiableMap(new EnumMap<>(carbon));
    }

    static CarbonInput of(String season, List<Part> parts, Humification humification) {
        Map<SourceKind, Sum> kinds = new EnumMap<>(SourceKind.class);
        for (SourceKind kind : SourceKind.values()) {
            List<Part> some =
                    parts.stream().filter(part -> part.piece().kind() == kind).toList();
            if (!some.isEmpty()) {
                kinds.put(kind, sum(some, part -> part.matter().carbon()));
            }
        }
        SortedSet<Long> entries = new TreeSet<>();
        parts.forEach(part -> entries.addAll(part.piece().entries()));
        return new CarbonInput(
                season,
                kinds,
                sum(parts, part -> part.matter().carbon()),
                humus(parts, part -> part.matter().carbon(), Humification::amg, humification),
                humus(parts, part -> part.matter().carbon(), Humification::icbm, humification),
                humus(parts, part -> part.matter().dry(), Humification::henin, humification),
                entries);
    }

    private static Sum humus(
            List<Part> parts,
            Function<Part, Optional<Estimate>> of,
            BiFunction<Humification, Return, Optional<Estimate>> share,
            Humification humification) {
        return sum(
                parts,
                part -> of.apply(part)
                        .flatMap(mass -> share.apply(humification, part.piece()).map(mass::times)));
    }

    private static Sum sum(List<Part> parts, Function<Part, Optional<Estimate>> figure) {
        List<Optional<Estimate>> figures = new ArrayList<>();
        parts.forEach(part -> figures.add(figure.apply(part)));
        return Sum.of(figures);
    }
}

package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.language.NaturalOrder;
import bedledger.projections.history.Flip;
import bedledger.projections.history.Flips;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;

/** The pieces put together by bed, crop or material, flip, and season; and all of them. */
public final class Totals {
    private final Basis basis;
    private final List<Return> pieces;
    private final Options options;
    private final Map<BedId, List<Flip>> flips = new HashMap<>();

    Totals(Basis basis, List<Return> pieces, Options options) {
        this.basis = basis;
        this.pieces = pieces;
        this.options = options;
    }

    /** All pieces together. */
    public Total all() {
        return Total.of(
                "all",
                OptionalDouble.empty(),
                pieces.stream().map(Portion::whole).toList(),
                options);
    }

    /** One total for each bed that something went to, in natural order; with its area. */
    public List<Total> byBed() {
        Map<String, List<Portion>> grouped = new TreeMap<>(NaturalOrder.INSTANCE);
        pieces.forEach(piece -> piece.beds()
                .forEach(share -> grouped.computeIfAbsent(share.bed().name(), name -> new ArrayList<>())
                        .add(Portion.of(piece, share))));
        List<Total> totals = new ArrayList<>();
        grouped.forEach((name, portions) -> totals.add(Total.of(name, area(new BedId(name)), portions, options)));
        return List.copyOf(totals);
    }

    private OptionalDouble area(BedId bed) {
        return OptionalDouble.of(basis.areas.squareMetres(bed, basis.asOf));
    }

    /** One total for each crop or material, by name. */
    public List<Total> byCrop() {
        return whole(Return::what);
    }

    /** One total for each season, oldest first; the season of a piece is that of its day. */
    public List<Total> bySeason() {
        return whole(piece -> options.season(piece.day()));
    }

    private List<Total> whole(Function<Return, String> key) {
        Map<String, List<Portion>> grouped = new TreeMap<>();
        pieces.forEach(piece -> grouped.computeIfAbsent(key.apply(piece), name -> new ArrayList<>())
                .add(Portion.whole(piece)));
        List<Total> totals = new ArrayList<>();
        grouped.forEach((name, portions) -> totals.add(Total.of(name, OptionalDouble.empty(), portions, options)));
        return List.copyOf(totals);
    }

    /** One total for each flip of a bed, bed by bed, oldest first; what fell in no flip stands last for its bed. */
    public List<Total> byFlip() {
        Map<BedId, Map<String, List<Portion>>> grouped = new HashMap<>();
        pieces.forEach(piece -> piece.beds()
                .forEach(share -> grouped.computeIfAbsent(share.bed(), this::flipsInOrder)
                        .computeIfAbsent(flip(share.bed(), piece.day()), name -> new ArrayList<>())
                        .add(Portion.of(piece, share))));
        List<Total> totals = new ArrayList<>();
        for (BedId bed : basis.farm.beds()) {
            grouped.getOrDefault(bed, Map.of()).forEach((name, portions) -> {
                if (!portions.isEmpty()) {
                    totals.add(Total.of(name, area(bed), portions, options));
                }
            });
        }
        return List.copyOf(totals);
    }

    private Map<String, List<Portion>> flipsInOrder(BedId bed) {
        Map<String, List<Portion>> grouped = new LinkedHashMap<>();
        flips(bed).forEach(flip -> grouped.put(flip.name(), new ArrayList<>()));
        grouped.put(outside(bed), new ArrayList<>());
        return grouped;
    }

    private List<Flip> flips(BedId bed) {
        return flips.computeIfAbsent(bed, each -> Flips.of(basis.farm, each, basis.areas, basis.asOf));
    }

    /** The flip that a day falls in: the last that had begun, if it was not over. */
    private String flip(BedId bed, LocalDate day) {
        return flips(bed).stream()
                .filter(flip -> !flip.from().isAfter(day))
                .reduce((earlier, later) -> later)
                .filter(flip -> flip.to().map(end -> !end.isBefore(day)).orElse(true))
                .map(Flip::name)
                .orElse(outside(bed));
    }

    private static String outside(BedId bed) {
        return bed + ": outside a flip";
    }
}

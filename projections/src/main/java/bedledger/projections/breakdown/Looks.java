package bedledger.projections.breakdown;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Observation;
import bedledger.projections.returned.Left;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The farm's own looks at its residue, by group: tarp checks, and quadrats cut after flailing. */
final class Looks {
    /** Something seen of a piece; of several beds looked at in one act only the first counts, for the hand was the same. */
    private record Seen(Entry entry, BedId bed, Return piece, Optional<Left> left) {
        LocalDate day() {
            return entry.head().doneOn();
        }
    }

    private final Pieces pieces;
    private final List<Seen> seen = new ArrayList<>();

    /** Finds them and has the weather read as far back as they need. */
    Looks(Pieces pieces, Returned returned) {
        this.pieces = pieces;
        pieces.farm.ofKind(Observation.TarpChecked.class).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(pieces.on))
                .forEach(this::check);
        returned.left()
                .forEach(left -> pieces.lyingOn(left.bed(), left.entry().head().doneOn(), left.crop())
                        .ifPresent(piece -> seen.add(new Seen(left.entry(), left.bed(), piece, Optional.of(left)))));
        seen.removeIf(each -> !usable(each));
        seen.sort(Comparator.comparing(Seen::day)
                .thenComparing(each -> each.entry().number())
                .reversed());
        Map<String, Integer> counted = new TreeMap<>();
        seen.removeIf(each -> counted.merge(group(each.piece()), 1, Integer::sum) > Constants.count("looks at most"));
        seen.forEach(each -> pieces.reachBackTo(each.piece().day()));
    }

    private void check(Entry entry) {
        Observation.TarpChecked check = (Observation.TarpChecked) entry.fact();
        check.beds().stream()
                .flatMap(bed -> pieces.lyingOn(bed, entry.head().doneOn(), Optional.empty()).stream()
                        .map(piece -> new Seen(entry, bed, piece, Optional.empty())))
                .findFirst()
                .ifPresent(seen::add);
    }

    private static boolean usable(Seen each) {
        boolean known = each.piece().on(each.bed()).dry().stream().anyMatch(mass -> mass.best() > 0);
        return known
                && ResidueGroup.ofCrop(each.piece().what()).isPresent()
                && each.left().stream().allMatch(left -> left.dry().isPresent());
    }

    private static String group(Return piece) {
        return ResidueGroup.ofCrop(piece.what()).map(ResidueGroup::name).orElse("");
    }

    /** The rates of every group that something was seen of. */
    Map<String, FarmRate> rates() {
        Map<String, List<Look>> byGroup = new LinkedHashMap<>();
        for (Seen each : seen) {
            List<Look> looks = byGroup.computeIfAbsent(group(each.piece()), name -> new ArrayList<>());
            pieces.going(each.piece(), each.bed(), Map.of()).ifPresent(going -> looks.addAll(looks(each, going)));
        }
        Map<String, FarmRate> rates = new TreeMap<>();
        byGroup.forEach((name, looks) -> ResidueGroup.named(name)
                .filter(group -> !looks.isEmpty())
                .ifPresent(group -> rates.put(name, FarmRate.of(group, looks))));
        return rates;
    }

    private List<Look> looks(Seen each, Going going) {
        int day = pieces.climate().index(each.day());
        if (Double.isNaN(going.left(day, Assumptions.BEST))) {
            return List.of();
        }
        if (each.left().isPresent()) {
            return each.left().get().dry().stream()
                    .map(dry -> Look.quadrats(each.left().get(), dry, going, day, pieces.unit))
                    .toList();
        }
        Observation.TarpChecked check = (Observation.TarpChecked) each.entry().fact();
        List<Look> looks = new ArrayList<>();
        if (check.leaves() != null) {
            looks.add(Look.soft(each.entry(), going, Look.Of.LEAVES, day, check.leaves()));
        }
        if (check.stalks() != null) {
            looks.add(Look.soft(each.entry(), going, Look.Of.STALKS, day, check.stalks()));
        }
        return looks;
    }
}

package bedledger.projections.trends;

import bedledger.language.BedId;
import bedledger.projections.returned.Hauled;
import bedledger.projections.returned.Returned;
import bedledger.projections.returned.Sum;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What was hauled off a bed in a season instead of going back.
 *
 * @param dry of the shoots, kg; roots that were pulled with them are not in it
 */
public record Carted(BedId bed, Season season, Sum dry, SortedSet<Long> entries) {
    static Carted of(Returned returned, BedId bed, Season season) {
        List<Hauled> hauls = returned.hauled().stream()
                .filter(haul -> season.holds(haul.entry().head().doneOn()))
                .filter(haul ->
                        haul.beds().stream().anyMatch(share -> share.bed().equals(bed)))
                .toList();
        SortedSet<Long> entries = new TreeSet<>();
        hauls.forEach(haul -> entries.add(haul.entry().number()));
        return new Carted(
                bed, season, Sum.of(hauls.stream().map(haul -> haul.from(bed)).toList()), entries);
    }

    public boolean isNothing() {
        return entries.isEmpty();
    }
}

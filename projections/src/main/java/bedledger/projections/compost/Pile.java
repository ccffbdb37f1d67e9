package bedledger.projections.compost;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.PileId;
import bedledger.language.Ratio;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A recorded pile, as it was built.
 *
 * @param recorded the C:N that was written down; the mix stands beside it
 * @param unweighed ingredients recorded without amounts, for which the mix cannot answer
 */
public record Pile(
        PileId pile, LocalDate built, long entry, Optional<Ratio> recorded, List<String> unweighed, Blend mix) {
    public Pile {
        unweighed = List.copyOf(unweighed);
    }

    /** The piles built by a day, in that order. */
    public static List<Pile> of(Farm farm, Tables tables, LocalDate asOf) {
        return farm.ofKind(Fertility.PileBuilt.class).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(asOf))
                .map(entry -> of(entry, (Fertility.PileBuilt) entry.fact(), tables))
                .toList();
    }

    private static Pile of(Entry entry, Fertility.PileBuilt built, Tables tables) {
        return new Pile(
                built.pile(),
                entry.head().doneOn(),
                entry.number(),
                Optional.ofNullable(built.carbonToNitrogen()),
                built.ingredients(),
                mix(built, tables));
    }

    /** What the feedstocks come to; incomplete where something went in without an amount. */
    public static Blend mix(Fertility.PileBuilt built, Tables tables) {
        Blend weighed = Blend.of(built.feedstocks(), tables);
        return built.ingredients().isEmpty() ? weighed : weighed.lacking(built.ingredients());
    }
}

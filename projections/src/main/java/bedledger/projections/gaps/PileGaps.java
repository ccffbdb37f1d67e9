package bedledger.projections.gaps;

import bedledger.language.Amount;
import bedledger.language.Entry;
import bedledger.language.Fertility;
import bedledger.language.PileId;
import bedledger.projections.gaps.Gap.Topic;
import bedledger.projections.stock.StockMove;
import bedledger.projections.stock.StockMove.Way;
import bedledger.projections.stock.StockMoves;
import bedledger.projections.stock.Tally;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Compost whose volume has no use, or whose use has no volume. */
final class PileGaps {
    static Stream<Gap> of(Looked looked) {
        return looked.places(PileId.class).stream().flatMap(pile -> of(looked, pile));
    }

    private static Stream<Gap> of(Looked looked, PileId pile) {
        List<Entry> entries = looked.entries(pile);
        List<StockMove> moves = StockMoves.of(looked.farm(), pile, looked.day());
        Optional<Amount> made = moves.stream()
                .filter(move -> move.way() == Way.MADE)
                .flatMap(move -> move.amount().stream())
                .reduce((earlier, later) -> later);
        List<Amount> spread = moves.stream()
                .filter(move -> move.way() == Way.SPREAD)
                .flatMap(move -> move.amount().stream())
                .toList();
        String went = spread.isEmpty()
                ? "none of it is recorded as spread"
                : Tally.of(spread.get(0).quantity().unit(), spread) + " of it was spread";
        if (made.isEmpty()) {
            boolean built = entries.stream().anyMatch(entry -> entry.fact() instanceof Fertility.PileBuilt);
            return built
                    ? Stream.of(gap(
                            pile,
                            "How much compost it made is not recorded; " + went + ".",
                            "did finish-pile " + pile + " --volume VOLUME --on DATE",
                            entries))
                    : Stream.empty();
        }
        return unused(pile, made.get(), spread, went, entries);
    }

    private static Stream<Gap> unused(PileId pile, Amount made, List<Amount> spread, String went, List<Entry> entries) {
        Tally used = Tally.of(made.quantity().unit(), spread);
        boolean comparable = used.apart().isEmpty();
        Tally left = Tally.of(made.quantity().unit(), List.of(made)).minus(used);
        if (comparable && left.number().signum() <= 0) {
            return Stream.empty();
        }
        return Stream.of(gap(
                pile,
                made + " of compost, " + went
                        + (comparable
                                ? ": where " + left + " went is not recorded."
                                : ": a weight cannot be set against a volume."),
                comparable
                        ? "did spread BEDS --pile " + pile + " --quantity AMOUNT --on DATE"
                        : "did finish-pile " + pile + " --weight WEIGHT --on DATE",
                entries));
    }

    private static Gap gap(PileId pile, String says, String command, List<Entry> entries) {
        List<Entry> telling = entries.stream()
                .filter(entry -> !(entry.fact() instanceof Fertility.PileRead)
                        && !(entry.fact() instanceof Fertility.PileTurned))
                .toList();
        return new Gap(Topic.INPUTS, "pile " + pile, says, command, Looked.numbers(telling));
    }

    private PileGaps() {}
}

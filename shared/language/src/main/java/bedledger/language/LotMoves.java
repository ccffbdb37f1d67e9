package bedledger.language;

import bedledger.language.LotMove.Way;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What each kind of act moves into and out of lots; a kind that is not named here moves nothing. */
final class LotMoves {
    /** What an entry moves into or out of one lot, in the order written. */
    static Stream<LotMove> of(LotId lot, Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Harvesting.Harvested harvested) {
            return one(lot, harvested.lot(), entry, Way.HARVESTED, harvested.quantity());
        }
        if (fact instanceof Harvesting.LotFound found) {
            return one(lot, found.lot(), entry, Way.FOUND, found.quantity());
        }
        if (fact instanceof Harvesting.LotsJoined joined) {
            return joined.into().equals(lot)
                    ? gathered(entry, joined)
                    : parts(lot, entry, Way.INTO_ANOTHER, joined.lots(), joined.into());
        }
        if (fact instanceof Harvesting.LotSplit split) {
            return split.lot().equals(lot)
                    ? split.into().stream().map(part -> move(entry, Way.INTO_ANOTHER, part.quantity(), part.lot()))
                    : parts(lot, entry, Way.SPLIT_OFF, split.into(), split.lot());
        }
        if (fact instanceof Harvesting.LotLost lost) {
            return parts(lot, entry, Way.LOST, lost.lots(), null);
        }
        return fact instanceof Selling selling ? sold(lot, entry, selling) : Stream.empty();
    }

    private static Stream<LotMove> sold(LotId lot, Entry entry, Selling selling) {
        if (selling instanceof Selling.Sold sold) {
            return parts(lot, entry, Way.SOLD, sold.lots(), null);
        }
        if (selling instanceof Selling.Donated donated) {
            return parts(lot, entry, Way.DONATED, donated.lots(), null);
        }
        return selling instanceof Selling.CustomerReturned back
                ? parts(lot, entry, Way.TAKEN_BACK, back.lots(), null)
                : Stream.empty();
    }

    /** Measured again, a joined lot holds what was measured; otherwise the sum of its parts. */
    private static Stream<LotMove> gathered(Entry entry, Harvesting.LotsJoined joined) {
        return joined.quantity() == null
                ? joined.lots().stream().map(part -> move(entry, Way.JOINED, part.quantity(), part.lot()))
                : Stream.of(move(entry, Way.JOINED, joined.quantity(), null));
    }

    private static Stream<LotMove> one(LotId lot, LotId named, Entry entry, Way way, Amount amount) {
        return named.equals(lot) ? Stream.of(move(entry, way, amount, null)) : Stream.empty();
    }

    private static Stream<LotMove> parts(
            LotId lot, Entry entry, Way way, List<LotAmount> parts, @Nullable LotId other) {
        return parts.stream()
                .filter(part -> part.lot().equals(lot))
                .map(part -> move(entry, way, part.quantity(), other));
    }

    private static LotMove move(Entry entry, Way way, Amount amount, @Nullable LotId other) {
        return new LotMove(entry, way, amount, other);
    }

    private LotMoves() {}
}

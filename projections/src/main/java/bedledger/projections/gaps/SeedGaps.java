package bedledger.projections.gaps;

import bedledger.language.Entry;
import bedledger.language.SeedLotId;
import bedledger.language.Stock;
import bedledger.language.StockForm;
import bedledger.projections.gaps.Gap.Topic;
import bedledger.projections.stock.StockMove;
import bedledger.projections.stock.StockMoves;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Seed that came in and was not sown, and papers of seed. */
final class SeedGaps {
    static Stream<Gap> of(Looked looked) {
        return Stream.concat(
                looked.places(SeedLotId.class).stream().flatMap(lot -> unsown(looked, lot)),
                looked.done(Stock.SeedReceived.class).stream().flatMap(SeedGaps::papers));
    }

    private static Stream<Gap> unsown(Looked looked, SeedLotId lot) {
        List<StockMove> moves = StockMoves.of(looked.farm(), lot, looked.day());
        List<Entry> received = moves.stream()
                .filter(move -> move.way() == StockMove.Way.RECEIVED)
                .map(StockMove::entry)
                .toList();
        boolean used = moves.stream().anyMatch(move -> move.way().sign() < 0);
        if (used || received.isEmpty()) {
            return Stream.empty();
        }
        Stock.SeedReceived seed = (Stock.SeedReceived) received.get(0).fact();
        return Stream.of(new Gap(
                Topic.SEED,
                "seed lot " + lot + ", " + seed.crop(),
                seed.quantity() + " came in, and no sowing or planting names it.",
                "did sow BEDS --crop " + Looked.typed(seed.crop()) + " --seed-lot " + lot
                        + " --quantity AMOUNT --on DATE",
                Looked.numbers(received)));
    }

    private static Stream<Gap> papers(Entry entry) {
        Stock.SeedReceived seed = (Stock.SeedReceived) entry.fact();
        List<Gap> gaps = new ArrayList<>();
        if (seed.receipt() == null) {
            gaps.add(paper(entry, seed, "No receipt is named.", "--receipt NUMBER"));
        }
        if (seed.supplier() == null) {
            gaps.add(paper(entry, seed, "The supplier is not recorded.", "--supplier \"NAME\""));
        }
        if (Boolean.TRUE.equals(seed.organic()) && seed.certificate() == null) {
            gaps.add(paper(entry, seed, "It is organic, and no certificate is named.", "--certificate \"WHERE KEPT\""));
        }
        if (Boolean.FALSE.equals(seed.organic()) && seed.notEngineered() == null) {
            gaps.add(paper(
                    entry,
                    seed,
                    "It is not organic, and no word of the supplier is named that it is not genetically engineered.",
                    "--not-engineered \"WHERE KEPT\""));
        }
        if (seed.form() == null && seed.quantity().quantity().unit() == bedledger.language.Unit.PLANT) {
            gaps.add(paper(
                    entry,
                    seed,
                    "Whether it is planting stock or seedlings is not recorded.",
                    "--form " + bedledger.language.Words.of(StockForm.SEEDLINGS)));
        }
        return gaps.stream();
    }

    private static Gap paper(Entry entry, Stock.SeedReceived seed, String says, String what) {
        return new Gap(
                Topic.SEED,
                "seed lot " + seed.seedLot() + ", " + seed.crop(),
                says,
                Looked.correct(entry, what),
                List.of(entry.number()));
    }

    private SeedGaps() {}
}

package bedledger.projections.stock;

import bedledger.language.Amount;
import bedledger.language.Care;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.Harvesting;
import bedledger.language.MaterialName;
import bedledger.language.PileId;
import bedledger.language.Place;
import bedledger.language.Planting;
import bedledger.language.Quantity;
import bedledger.language.SeedLotId;
import bedledger.language.Stock;
import bedledger.projections.stock.StockMove.Way;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The moves of one material, seed lot or pile, in the order of the work. */
public final class StockMoves {
    /** By the end of a day. */
    public static List<StockMove> of(Farm farm, Place place, LocalDate day) {
        return farm.entries(place).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(day))
                .flatMap(entry -> of(place, entry))
                .toList();
    }

    private static Stream<StockMove> of(Place place, Entry entry) {
        if (place instanceof MaterialName material) {
            return material(material, entry);
        }
        if (place instanceof SeedLotId) {
            return seed(entry);
        }
        return place instanceof PileId ? pile(entry) : Stream.empty();
    }

    private static Stream<StockMove> material(MaterialName material, Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Stock.MaterialReceived received) {
            return move(entry, Way.RECEIVED, received.quantity());
        }
        if (fact instanceof Stock.MaterialCounted counted) {
            return move(entry, Way.COUNTED, counted.quantity());
        }
        if (fact instanceof Stock.MixMade made) {
            return made.mix().equals(material) ? move(entry, Way.MADE, made.made()) : move(entry, Way.MIXED, null);
        }
        if (fact instanceof Fertility.Spread spread) {
            return move(
                    entry,
                    Way.SPREAD,
                    overAll(spread.quantity(), spread.perBed(), spread.beds().size()));
        }
        if (fact instanceof Care.Sprayed sprayed) {
            return move(entry, Way.SPRAYED, sprayed.quantity());
        }
        if (fact instanceof Stock.MaterialLost lost) {
            return move(entry, Way.LOST, lost.quantity());
        }
        if (fact instanceof Planting.TraysSown || fact instanceof Planting.TraysPottedUp) {
            return move(entry, Way.IN_TRAYS, null);
        }
        return fact instanceof Harvesting.LotsWashed ? move(entry, Way.WASHED_WITH, null) : Stream.empty();
    }

    private static Stream<StockMove> seed(Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Stock.SeedReceived received) {
            return move(entry, Way.RECEIVED, received.quantity());
        }
        if (fact instanceof Planting.Sown sown) {
            return move(
                    entry,
                    Way.SOWN,
                    overAll(sown.quantity(), sown.perBed(), sown.beds().size()));
        }
        if (fact instanceof Planting.CoverSown sown) {
            return move(
                    entry,
                    Way.SOWN,
                    overAll(sown.quantity(), sown.perBed(), sown.beds().size()));
        }
        if (fact instanceof Planting.TraysSown trays) {
            return move(entry, Way.IN_TRAYS, trays.quantity());
        }
        return fact instanceof Planting.Transplanted ? move(entry, Way.PLANTED, null) : Stream.empty();
    }

    private static Stream<StockMove> pile(Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Fertility.PileFinished finished) {
            Amount made = finished.volume() != null
                    ? new Amount(finished.volume().quantity())
                    : finished.weight() == null
                            ? null
                            : new Amount(finished.weight().quantity());
            return move(entry, Way.MADE, made);
        }
        if (fact instanceof Fertility.Spread spread) {
            return move(
                    entry,
                    Way.SPREAD,
                    overAll(spread.quantity(), spread.perBed(), spread.beds().size()));
        }
        return fact instanceof Stock.MixMade ? move(entry, Way.MIXED, null) : Stream.empty();
    }

    private static Stream<StockMove> move(Entry entry, Way way, @Nullable Amount amount) {
        return Stream.of(new StockMove(entry, way, Optional.ofNullable(amount)));
    }

    private static @Nullable Amount overAll(@Nullable Amount quantity, @Nullable Amount perBed, int beds) {
        if (quantity != null || perBed == null) {
            return quantity;
        }
        Quantity each = perBed.quantity();
        return new Amount(new Quantity(each.number().multiply(BigDecimal.valueOf(beds)), each.unit()));
    }

    private StockMoves() {}
}

package bedledger.domain;

import bedledger.language.Amount;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Harvesting;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import bedledger.language.Place;
import bedledger.language.SeedLotId;
import bedledger.language.Selling;
import bedledger.language.Stock;
import bedledger.language.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What a writer should know of the lots and seed lots an entry names: said, never a reason to refuse. */
final class StockWords {
    static List<String> of(Farm farm, Entry entry) {
        List<String> says = new ArrayList<>();
        for (Place place : entry.fact().places()) {
            if (place instanceof SeedLotId seed && !(entry.fact() instanceof Stock.SeedReceived)) {
                boolean received = farm.entries(seed).stream().anyMatch(e -> e.fact() instanceof Stock.SeedReceived);
                if (!received) {
                    says.add("Seed lot " + seed + " has no receipt in the book; if that is a slip, correct #"
                            + entry.number() + ".");
                }
            }
        }
        parts(entry.fact()).map(LotAmount::lot).distinct().forEach(lot -> lot(farm, lot, says));
        return says;
    }

    private static void lot(Farm farm, LotId lot, List<String> says) {
        List<Amount> came =
                farm.entries(lot).stream().flatMap(e -> came(e.fact())).toList();
        List<Amount> went = farm.entries(lot).stream()
                .flatMap(e -> parts(e.fact()))
                .filter(part -> part.lot().equals(lot))
                .map(LotAmount::quantity)
                .toList();
        if (came.isEmpty()) {
            return;
        }
        Unit unit = came.get(0).quantity().unit();
        if (Stream.concat(came.stream(), went.stream())
                .anyMatch(amount -> !alike(unit, amount.quantity().unit()))) {
            says.add("Lot " + lot + " came in as " + came.get(0)
                    + "; what went out in another unit cannot be set against it.");
            return;
        }
        if (sum(went).compareTo(sum(came)) > 0) {
            says.add("Lot " + lot + ": more went out (" + inUnit(sum(went), unit) + ") than came in ("
                    + inUnit(sum(came), unit) + ").");
        }
    }

    private static boolean alike(Unit one, Unit other) {
        return one == other
                || (one.dimension() == other.dimension() && one.dimension() != bedledger.language.Dimension.COUNT);
    }

    private static Stream<Amount> came(Fact fact) {
        if (fact instanceof Harvesting.Harvested harvested) {
            return Stream.of(harvested.quantity());
        }
        return fact instanceof Harvesting.LotFound found ? Stream.of(found.quantity()) : Stream.empty();
    }

    /** What an entry takes out of lots. */
    private static Stream<LotAmount> parts(Fact fact) {
        if (fact instanceof Selling.Sold sold) {
            return sold.lots().stream();
        }
        if (fact instanceof Selling.Donated donated) {
            return donated.lots().stream();
        }
        return fact instanceof Harvesting.LotLost lost ? lost.lots().stream() : Stream.empty();
    }

    private static BigDecimal sum(List<Amount> amounts) {
        return amounts.stream().map(amount -> amount.quantity().inBase()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static String inUnit(BigDecimal base, Unit unit) {
        return base.divide(unit.factor(), java.math.MathContext.DECIMAL32)
                        .stripTrailingZeros()
                        .toPlainString() + " " + unit.symbol();
    }

    private StockWords() {}
}

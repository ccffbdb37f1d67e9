package bedledger.domain;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.LotAccount;
import bedledger.language.LotId;
import bedledger.language.LotMove;
import bedledger.language.Place;
import bedledger.language.Planting;
import bedledger.language.SeedLotId;
import bedledger.language.Stock;
import bedledger.language.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

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
        entry.fact().places().stream()
                .filter(LotId.class::isInstance)
                .map(LotId.class::cast)
                .forEach(lot -> lot(LotAccount.of(lot, farm.entries(lot)), entry, says));
        if (entry.fact() instanceof Planting.Transplanted set) {
            set.trays().forEach(trays -> TrayWords.of(farm, trays).ifPresent(says::add));
        }
        return says;
    }

    private static void lot(LotAccount account, Entry entry, List<String> says) {
        account.left().ifPresent(left -> {
            boolean apartHere =
                    left.apart().stream().anyMatch(move -> move.entry().number() == entry.number());
            if (apartHere) {
                says.add("Lot " + account.lot() + " came in as "
                        + account.began().get(0).amount()
                        + "; what went out in another unit cannot be set against it.");
            } else if (left.number().signum() < 0 && takesOut(account, entry)) {
                says.add("Lot " + account.lot() + ": more went out (" + sum(account, left.unit(), -1)
                        + ") than came in (" + sum(account, left.unit(), 1) + ").");
            }
        });
    }

    private static boolean takesOut(LotAccount account, Entry entry) {
        return account.moves().stream()
                .anyMatch(move ->
                        move.entry().number() == entry.number() && move.way().sign() < 0);
    }

    private static String sum(LotAccount account, Unit unit, int sign) {
        List<LotMove> some = account.moves().stream()
                .filter(move -> move.way().sign() == sign)
                .toList();
        BigDecimal number = account.sum(some, unit).number().abs();
        return number.stripTrailingZeros().toPlainString() + " " + unit.symbol();
    }

    private StockWords() {}
}

package bedledger.projections.gaps;

import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Harvesting;
import bedledger.language.Lineage;
import bedledger.language.LotAccount;
import bedledger.language.LotId;
import bedledger.language.LotMove;
import bedledger.language.NaturalOrder;
import bedledger.language.Unit;
import bedledger.projections.gaps.Gap.Topic;
import bedledger.projections.stock.Tally;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Lots without an outlet, and what is left of others in a store that was not counted. */
final class StoreGaps {
    private final Looked looked;
    private final Lineage lineage;

    private StoreGaps(Looked looked) {
        this.looked = looked;
        this.lineage = Lineage.of(looked.farm(), looked.day());
    }

    static Stream<Gap> of(Looked looked) {
        return new StoreGaps(looked).all();
    }

    private Stream<Gap> all() {
        Map<String, List<LotAccount>> kept = new TreeMap<>();
        Map<String, List<LotAccount>> rest = new TreeMap<>();
        for (LotId lot : looked.places(LotId.class)) {
            LotAccount account = LotAccount.of(looked.farm(), lot, looked.day());
            if (account.opening().isEmpty()) {
                continue;
            }
            String crop = lineage.crop(lot).map(CropName::name).orElse("several crops");
            boolean noOutlet =
                    account.moves().stream().allMatch(move -> move.way().begins());
            (noOutlet ? kept : rest)
                    .computeIfAbsent(crop, c -> new ArrayList<>())
                    .add(account);
        }
        return Stream.concat(
                kept.entrySet().stream().map(crop -> noOutlet(crop.getKey(), crop.getValue())),
                rest.entrySet().stream().flatMap(crop -> leftOver(crop.getKey(), crop.getValue())));
    }

    private Gap noOutlet(String crop, List<LotAccount> lots) {
        LotAccount first = lots.get(0);
        return new Gap(
                Topic.HARVEST,
                crop,
                amounts(lots) + " in " + counted(lots.size())
                        + " has no outlet: not sold, given away, lost or counted out ("
                        + Looked.list(lots.stream().map(LotAccount::lot).toList()) + ").",
                "did sell " + first.lot() + "="
                        + first.began().get(0).amount().toString().replace(" ", "")
                        + " --as organic --buyer \"NAME\" --invoice NUMBER --on DATE; or did donate, did lose",
                Looked.numbers(
                        lots.stream().flatMap(lot -> lot.opening().stream()).toList()));
    }

    private static String counted(int lots) {
        return lots == 1 ? "1 lot" : lots + " lots";
    }

    /** What came into lots, unit by unit. */
    private static String amounts(List<LotAccount> lots) {
        Map<Unit, BigDecimal> sums = new TreeMap<>(Comparator.comparing(Unit::ordinal));
        lots.forEach(lot -> lot.left().ifPresent(left -> sums.merge(left.unit(), left.number(), BigDecimal::add)));
        return String.join(
                " and ",
                sums.entrySet().stream()
                        .map(sum -> Tally.words(sum.getValue(), sum.getKey()))
                        .toList());
    }

    private Stream<Gap> leftOver(String crop, List<LotAccount> lots) {
        List<LotAccount> open = lots.stream()
                .filter(lot ->
                        lot.left().filter(left -> left.number().signum() > 0).isPresent())
                .sorted(Comparator.comparing(lot -> lot.lot().toString(), NaturalOrder.INSTANCE))
                .toList();
        LocalDate last = lots.stream()
                .flatMap(lot -> lot.moves().stream())
                .map(LotMove::entry)
                .map(entry -> entry.head().doneOn())
                .max(Comparator.naturalOrder())
                .orElse(looked.from());
        boolean counted = looked.done(Harvesting.StoreCounted.class).stream()
                .filter(entry ->
                        ((Harvesting.StoreCounted) entry.fact()).crop().name().equals(crop))
                .map(Entry::head)
                .anyMatch(head -> !head.doneOn().isBefore(last));
        return open.isEmpty() || counted
                ? Stream.empty()
                : Stream.of(new Gap(
                        Topic.HARVEST,
                        crop,
                        "Left on paper: " + amounts(open) + " ("
                                + Looked.list(open.stream().map(LotAccount::lot).toList())
                                + "). After the last move, on " + last + ", no count is on record.",
                        "did count " + Looked.typed(crop) + " --quantity AMOUNT --on DATE",
                        Looked.numbers(open.stream()
                                .flatMap(lot -> lot.moves().stream())
                                .map(LotMove::entry)
                                .toList())));
    }
}

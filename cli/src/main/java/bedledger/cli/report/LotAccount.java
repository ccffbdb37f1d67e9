package bedledger.cli.report;

import bedledger.language.Amount;
import bedledger.language.Dimension;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import bedledger.language.Quantity;
import bedledger.language.Selling;
import bedledger.language.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One lot on paper: what there was of it, what went out and came back, what should be left.
 *
 * <p>Weights add to weights and volumes to volumes, by the exact factors of their units; a count adds only to a count in the same unit,
 * for a bunch or a crate has no weight of its own.
 *
 * @param opening the harvest, or the finding of it in the store
 * @param moves in the order of the work
 */
record LotAccount(LotId lot, Optional<Entry> opening, List<Move> moves) {
    private static final int DECIMALS = 3;

    /** What one entry says of the lot. */
    record Move(Entry entry, Amount amount, int sign) {}

    LotAccount {
        moves = List.copyOf(moves);
    }

    static LotAccount of(LotId lot, List<Entry> entries) {
        List<Move> moves = new ArrayList<>();
        for (Entry entry : entries) {
            lines(entry.fact()).stream()
                    .filter(line -> line.lot().equals(lot))
                    .forEach(line -> moves.add(new Move(
                            entry, line.quantity(), entry.fact() instanceof Selling.CustomerReturned ? 1 : -1)));
        }
        return new LotAccount(
                lot,
                entries.stream()
                        .filter(entry -> started(entry.fact()).isPresent())
                        .findFirst(),
                moves);
    }

    private static List<LotAmount> lines(Fact fact) {
        if (fact instanceof Selling.Sold sold) {
            return sold.lots();
        }
        if (fact instanceof Selling.Donated donated) {
            return donated.lots();
        }
        if (fact instanceof Selling.CustomerReturned back) {
            return back.lots();
        }
        return fact instanceof Harvesting.LotLost lost ? lost.lots() : List.of();
    }

    private static Optional<Amount> started(Fact fact) {
        if (fact instanceof Harvesting.Harvested harvested) {
            return Optional.of(harvested.quantity());
        }
        return fact instanceof Harvesting.LotFound found ? Optional.of(found.quantity()) : Optional.empty();
    }

    List<Move> moves(Class<? extends Fact> kind) {
        return moves.stream()
                .filter(move -> kind.isInstance(move.entry().fact()))
                .toList();
    }

    /** What should be left, in the unit it was harvested in; empty where no harvest of it is on record. */
    Optional<String> left() {
        return opening.flatMap(entry -> started(entry.fact())).map(this::left);
    }

    private String left(Amount started) {
        Unit unit = started.quantity().unit();
        BigDecimal left = started.quantity().number();
        List<String> apart = new ArrayList<>();
        for (Move move : moves) {
            if (comparable(move.amount().quantity().unit(), unit)) {
                left = left.add(in(move.amount().quantity(), unit).multiply(BigDecimal.valueOf(move.sign())));
            } else {
                apart.add((move.sign() < 0 ? "less " : "plus ") + move.amount());
            }
        }
        String figure = left.toPlainString().replace('-', '−') + " " + unit.symbol();
        return apart.isEmpty() ? figure : figure + ", " + String.join(", ", apart);
    }

    private static boolean comparable(Unit one, Unit other) {
        return one == other || (one.dimension() == other.dimension() && one.dimension() != Dimension.COUNT);
    }

    private static BigDecimal in(Quantity quantity, Unit unit) {
        return quantity.unit() == unit
                ? quantity.number()
                : quantity.inBase().divide(unit.factor(), DECIMALS, RoundingMode.HALF_EVEN);
    }
}

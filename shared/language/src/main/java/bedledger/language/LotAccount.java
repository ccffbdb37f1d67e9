package bedledger.language;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One lot on paper: how it began, what came in and went out, what should be left.
 *
 * <p>Weights add to weights and volumes to volumes, by the exact factors of their units. A count adds only to a count in the same unit,
 * unless an entry says what one of them weighs: the size of a pack, or the weight of one as harvested.
 *
 * @param opening the entry that began it; empty where none in force does
 * @param moves in the order of the work
 */
public record LotAccount(LotId lot, Optional<Entry> opening, List<LotMove> moves, PackWeights weights) {

    /**
     * What is left of a lot.
     *
     * @param number below zero where more went out than came in
     * @param unit the unit it came in
     * @param apart what is in units that cannot be set against it
     */
    public record Left(BigDecimal number, Unit unit, List<LotMove> apart) {
        public Left {
            apart = List.copyOf(apart);
        }

        /** "−2.0 kg". */
        @Override
        public String toString() {
            return number.toPlainString().replace('-', '−') + " " + unit.symbol();
        }
    }

    public LotAccount {
        moves = List.copyOf(moves);
    }

    /** By the end of a day, from the entries of a farm. */
    public static LotAccount of(Farm farm, LotId lot, LocalDate day) {
        return of(
                lot,
                farm.entries(lot).stream()
                        .filter(entry -> !entry.head().doneOn().isAfter(day))
                        .toList());
    }

    /** From the entries in force that touch the lot, in the order of the work. */
    public static LotAccount of(LotId lot, List<Entry> entries) {
        return new LotAccount(
                lot,
                entries.stream().filter(entry -> opens(lot, entry.fact())).findFirst(),
                entries.stream().flatMap(entry -> LotMoves.of(lot, entry)).toList(),
                PackWeights.of(lot, entries));
    }

    /** Whether the fact begins this lot. */
    public static boolean opens(LotId lot, Fact fact) {
        if (fact instanceof Harvesting.LotsJoined joined) {
            return joined.into().equals(lot);
        }
        if (fact instanceof Harvesting.LotSplit split) {
            return split.into().stream().anyMatch(part -> part.lot().equals(lot));
        }
        return (fact instanceof Harvesting.Harvested harvested
                        && harvested.lot().equals(lot))
                || (fact instanceof Harvesting.LotFound found && found.lot().equals(lot));
    }

    public List<LotMove> moves(LotMove.Way way) {
        return moves.stream().filter(move -> move.way() == way).toList();
    }

    /** What came in when the lot began. */
    public List<LotMove> began() {
        return moves.stream().filter(move -> move.way().begins()).toList();
    }

    /** The unit the lot came in; empty where nothing on record began it. */
    public Optional<Unit> unit() {
        return began().stream().findFirst().map(move -> move.amount().quantity().unit());
    }

    /** What should be left, in the unit it came in; empty where nothing on record began it. */
    public Optional<Left> left() {
        return unit().map(unit -> sum(moves, unit));
    }

    /** The sum of some of its moves in a unit, what goes out below zero. */
    public Left sum(List<LotMove> some, Unit unit) {
        BigDecimal sum = BigDecimal.ZERO;
        List<LotMove> apart = new ArrayList<>();
        for (LotMove move : some) {
            Optional<BigDecimal> number = weights.in(move.amount(), unit);
            if (number.isPresent()) {
                sum = sum.add(
                        number.get().multiply(BigDecimal.valueOf(move.way().sign())));
            } else {
                apart.add(move);
            }
        }
        return new Left(sum, unit, apart);
    }

    /** The facts that pack it. */
    public static Stream<Harvesting.LotPacked> packings(LotId lot, List<Entry> entries) {
        return entries.stream()
                .map(Entry::fact)
                .filter(Harvesting.LotPacked.class::isInstance)
                .map(Harvesting.LotPacked.class::cast)
                .filter(packed -> packed.lot().equals(lot));
    }
}

package bedledger.projections.gaps;

import bedledger.language.Amount;
import bedledger.language.Entry;
import bedledger.language.Fertility;
import bedledger.language.MaterialName;
import bedledger.projections.gaps.Gap.Topic;
import bedledger.projections.stock.StockMove;
import bedledger.projections.stock.StockMove.Way;
import bedledger.projections.stock.StockMoves;
import bedledger.projections.stock.Tally;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Materials that came in and were not used up, or were used and never came in; spreadings without an amount. */
final class InputGaps {
    static Stream<Gap> of(Looked looked) {
        Stream<Gap> spread = looked.done(Fertility.Spread.class).stream()
                .filter(entry -> ((Fertility.Spread) entry.fact()).quantity() == null
                        && ((Fertility.Spread) entry.fact()).perBed() == null)
                .map(InputGaps::withoutAmount);
        return Stream.concat(
                spread, looked.places(MaterialName.class).stream().flatMap(material -> of(looked, material)));
    }

    private static Gap withoutAmount(Entry entry) {
        return new Gap(
                Topic.INPUTS,
                "spread on " + Looked.list(((Fertility.Spread) entry.fact()).beds()),
                "How much was spread is not recorded.",
                Looked.correct(entry, "--quantity AMOUNT"),
                List.of(entry.number()));
    }

    private static Stream<Gap> of(Looked looked, MaterialName material) {
        List<StockMove> moves = StockMoves.of(looked.farm(), material, looked.day());
        List<StockMove> in =
                moves.stream().filter(move -> move.way().sign() > 0).toList();
        List<StockMove> used =
                moves.stream().filter(move -> move.way().sign() < 0).toList();
        if (in.isEmpty()) {
            return used.isEmpty() ? Stream.empty() : Stream.of(neverCame(material, used));
        }
        boolean counted = !moves.isEmpty() && moves.get(moves.size() - 1).way() == Way.COUNTED;
        return counted ? Stream.empty() : left(material, in, used).stream();
    }

    private static Gap neverCame(MaterialName material, List<StockMove> used) {
        return new Gap(
                Topic.INPUTS,
                material.name(),
                "It was used, and the book does not say when and how much of it came in.",
                "did receive-material " + Looked.typed(material) + " --quantity AMOUNT --receipt NUMBER --on DATE",
                numbers(used));
    }

    private static Optional<Gap> left(MaterialName material, List<StockMove> in, List<StockMove> used) {
        Optional<Amount> first =
                in.stream().flatMap(move -> move.amount().stream()).findFirst();
        String says = first.map(amount -> words(amount, in, used)).orElse("How much came in is not recorded");
        return says.isEmpty()
                ? Optional.empty()
                : Optional.of(new Gap(
                        Topic.INPUTS,
                        material.name(),
                        says + ".",
                        "did count-material " + Looked.typed(material) + " --quantity AMOUNT --on DATE",
                        numbers(Stream.concat(in.stream(), used.stream()).toList())));
    }

    private static String words(Amount first, List<StockMove> in, List<StockMove> used) {
        Tally came = sum(first, in);
        Tally went = sum(first, used);
        Tally left = came.minus(went);
        boolean open = used.stream().anyMatch(move -> move.amount().isEmpty())
                || !left.apart().isEmpty();
        if (left.number().signum() == 0 && !open) {
            return "";
        }
        String uses = used.isEmpty() ? "no use is recorded" : went + " is recorded as used";
        return came + " came in, " + uses + ": where " + left + " is, is not recorded"
                + (open ? "; some uses have no amount that can be set against it" : "");
    }

    private static Tally sum(Amount first, List<StockMove> moves) {
        return Tally.of(
                first.quantity().unit(),
                moves.stream().flatMap(move -> move.amount().stream()).toList());
    }

    private static List<Long> numbers(List<StockMove> moves) {
        return Looked.numbers(moves.stream().map(StockMove::entry).toList());
    }

    private InputGaps() {}
}

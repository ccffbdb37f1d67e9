package bedledger.projections.balance;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.MaterialName;
import bedledger.language.Place;
import bedledger.language.Stock;
import bedledger.language.Unit;
import bedledger.projections.balance.Balance.Line;
import bedledger.projections.balance.Balance.Part;
import bedledger.projections.stock.StockMove;
import bedledger.projections.stock.StockMove.Way;
import bedledger.projections.stock.StockMoves;
import bedledger.projections.stock.Tally;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The balance of a listed material between two counts. */
public final class MaterialBalance {
    private final Period period;
    private final Unit unit;
    private final List<StockMove> moves;
    private final List<String> apart = new ArrayList<>();

    private MaterialBalance(Period period, List<StockMove> moves) {
        this.period = period;
        this.moves = moves.stream().filter(move -> period.holds(move.entry())).toList();
        this.unit = period.unit()
                .or(() -> moves.stream()
                        .flatMap(move -> move.amount().stream())
                        .map(amount -> amount.quantity().unit())
                        .findFirst())
                .orElse(Unit.KG);
    }

    /** Between two days, see {@link Period}. */
    public static Balance of(
            Farm farm, MaterialName material, @Nullable LocalDate from, @Nullable LocalDate to, LocalDate today) {
        List<StockMove> all = StockMoves.of(farm, material, today);
        List<Entry> counts = all.stream()
                .filter(move -> move.way() == Way.COUNTED)
                .map(StockMove::entry)
                .toList();
        Period period = Period.of(
                counts,
                MaterialBalance::figure,
                all.stream().map(move -> move.entry().head().doneOn()),
                from,
                to,
                today);
        return new MaterialBalance(period, all).balance(material, counts);
    }

    private static Count.Figure figure(Entry entry) {
        Stock.MaterialCounted counted = (Stock.MaterialCounted) entry.fact();
        return new Count.Figure(counted.quantity(), counted.where() == null ? "" : counted.where());
    }

    private Balance balance(MaterialName material, List<Entry> counts) {
        List<Line> lines = new ArrayList<>();
        for (int sign : new int[] {1, -1}) {
            for (Way way : Way.values()) {
                if (way.sign() == sign) {
                    line(way).ifPresent(lines::add);
                }
            }
        }
        List<String> missing = new ArrayList<>(period.missing(material.name(), counts));
        missing.addAll(apart);
        return new Balance(
                material.name(),
                period.from(),
                period.to(),
                unit,
                period.count(period.opening(), unit),
                period.count(period.closing(), unit),
                lines,
                missing);
    }

    private Optional<Line> line(Way way) {
        List<Part> parts = new ArrayList<>();
        BigDecimal sum = BigDecimal.ZERO;
        for (StockMove move : moves) {
            if (move.way() != way) {
                continue;
            }
            Optional<BigDecimal> number = move.amount().flatMap(amount -> Tally.in(unit, amount));
            if (number.isEmpty()) {
                apart.add("#" + move.entry().number() + ": how much was " + way.words() + " is "
                        + move.amount()
                                .map(amount -> amount + ", which nothing turns into " + unit.symbol())
                                .orElse("not recorded")
                        + ".");
                continue;
            }
            sum = sum.add(number.get());
            parts.add(new Part(
                    move.entry().number(),
                    move.entry().head().doneOn(),
                    where(move.entry()),
                    move.amount().orElseThrow()));
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(new Line(way.words(), way.sign(), sum, parts));
    }

    private static String where(Entry entry) {
        return entry.fact().places().stream()
                .filter(place -> !(place instanceof MaterialName))
                .map(Place::toString)
                .collect(Collectors.joining(" "));
    }
}

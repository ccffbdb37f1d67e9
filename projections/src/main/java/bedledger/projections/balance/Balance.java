package bedledger.projections.balance;

import bedledger.language.Amount;
import bedledger.language.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Opening count, what came in, what went out, what should be there, and what was counted.
 *
 * @param of the crop or material
 * @param unit the unit everything is counted in
 * @param opening empty where nothing was counted on the first day
 * @param closing empty where nothing was counted on the last day
 * @param lines what came in, then what went out
 * @param missing why the balance is incomplete, as sentences; empty where it is complete
 */
public record Balance(
        String of,
        LocalDate from,
        LocalDate to,
        Unit unit,
        Optional<Count> opening,
        Optional<Count> closing,
        List<Line> lines,
        List<String> missing) {
    /**
     * What came in or went out in one way.
     *
     * @param sign 1 for what came in, -1 for what went out
     * @param sum never below zero
     */
    public record Line(String words, int sign, BigDecimal sum, List<Part> parts) {
        public Line {
            parts = List.copyOf(parts);
        }
    }

    /** What one entry says of it; {@code what} is a lot, a bed or a product. */
    public record Part(long entry, LocalDate day, String what, Amount amount) {}

    public Balance {
        lines = List.copyOf(lines);
        missing = List.copyOf(missing);
    }

    public boolean isComplete() {
        return missing.isEmpty();
    }

    /** The opening count and what came in since; empty where nothing was counted at the start. */
    public Optional<BigDecimal> held() {
        return opening.map(count -> count.number().add(sum(1)));
    }

    /** What should be there at the end. */
    public Optional<BigDecimal> expected() {
        return held().map(held -> held.subtract(sum(-1)));
    }

    /** Counted less expected: below zero where it falls short. */
    public Optional<BigDecimal> difference() {
        return closing.flatMap(count -> expected().map(count.number()::subtract));
    }

    /** The difference, in percent of what there was, to two places; empty where there was nothing. */
    public Optional<BigDecimal> percent() {
        return difference()
                .flatMap(difference -> held().filter(held -> held.signum() > 0)
                        .map(held -> difference
                                .abs()
                                .multiply(BigDecimal.valueOf(100))
                                .divide(held, 2, RoundingMode.HALF_UP)));
    }

    private BigDecimal sum(int sign) {
        return lines.stream()
                .filter(line -> line.sign() == sign)
                .map(Line::sum)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}

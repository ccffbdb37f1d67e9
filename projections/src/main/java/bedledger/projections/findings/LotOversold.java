package bedledger.projections.findings;

import bedledger.language.Amount;
import bedledger.language.CropName;
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
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** No more goes out of a lot than came into it: 7 CFR 205.103. The rule sets no tolerance. */
record LotOversold(RuleSheet sheet) implements Rule {

    private record Flow(Entry entry, String words, Amount amount, int sign) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<LotId, List<Flow>> out = new TreeMap<>(Wording.NATURAL);
        outflows(inquiry)
                .forEach(entry -> lines(entry.fact())
                        .forEach(line -> out.computeIfAbsent(line.lot(), lot -> new ArrayList<>())
                                .add(flow(entry, line.quantity()))));
        return out.entrySet().stream()
                .flatMap(lot -> finding(inquiry, lot.getKey(), lot.getValue()).stream())
                .toList();
    }

    private static Stream<Entry> outflows(Inquiry inquiry) {
        return Stream.concat(
                inquiry.done(Selling.class).stream().map(Done::entry),
                inquiry.done(Harvesting.LotLost.class).stream().map(Done::entry));
    }

    private static List<LotAmount> lines(Fact fact) {
        if (fact instanceof Selling.Sold sold) {
            return sold.lots();
        }
        if (fact instanceof Selling.Donated donated) {
            return donated.lots();
        }
        if (fact instanceof Selling.CustomerReturned returned) {
            return returned.lots();
        }
        return fact instanceof Harvesting.LotLost lost ? lost.lots() : List.of();
    }

    private static Flow flow(Entry entry, Amount amount) {
        boolean back = entry.fact() instanceof Selling.CustomerReturned;
        String words = entry.fact() instanceof Selling.Sold
                ? "sold"
                : entry.fact() instanceof Selling.Donated ? "donated" : back ? "taken back" : "lost";
        return new Flow(entry, words, amount, back ? 1 : -1);
    }

    private Optional<Finding> finding(Inquiry inquiry, LotId lot, List<Flow> flows) {
        return opening(inquiry, lot).flatMap(opening -> {
            Quantity in = opening.amount().quantity();
            List<Flow> same =
                    flows.stream().filter(flow -> comparable(flow, in.unit())).toList();
            BigDecimal left = same.stream()
                    .map(flow -> in(flow.amount().quantity(), in.unit()).multiply(BigDecimal.valueOf(flow.sign())))
                    .reduce(in.number(), BigDecimal::add);
            return left.signum() < 0
                    ? Optional.of(over(inquiry, lot, opening, same, left, flows.size() - same.size()))
                    : Optional.empty();
        });
    }

    private static Optional<Flow> opening(Inquiry inquiry, LotId lot) {
        Entry entry = inquiry.farm().lot(lot).on(inquiry.asOf()).opening();
        if (entry == null) {
            return Optional.empty();
        }
        return entry.fact() instanceof Harvesting.Harvested harvested
                ? Optional.of(new Flow(entry, "harvested", harvested.quantity(), 1))
                : entry.fact() instanceof Harvesting.LotFound found
                        ? Optional.of(new Flow(entry, "found", found.quantity(), 1))
                        : Optional.empty();
    }

    /** Weights can be added to weights; a bunch or a crate has no weight of its own. */
    private static boolean comparable(Flow flow, Unit unit) {
        Unit other = flow.amount().quantity().unit();
        return other == unit
                || (other.dimension() == unit.dimension() && other.dimension() != bedledger.language.Dimension.COUNT);
    }

    /** To the thousandth where units differ; as written where they do not. */
    private static BigDecimal in(Quantity quantity, Unit unit) {
        return quantity.unit() == unit
                ? quantity.number()
                : quantity.inBase().divide(unit.factor(), 3, RoundingMode.HALF_EVEN);
    }

    private static CropName crop(Entry opening) {
        return opening.fact() instanceof Harvesting.Harvested harvested
                ? harvested.crop()
                : ((Harvesting.LotFound) opening.fact()).crop();
    }

    private Finding over(Inquiry inquiry, LotId lot, Flow opening, List<Flow> flows, BigDecimal left, int otherUnits) {
        Unit unit = opening.amount().quantity().unit();
        String result = left.toPlainString().replace('-', '−') + " " + unit.symbol();
        StringBuilder sum = new StringBuilder(opening.amount() + " " + opening.words());
        flows.forEach(flow -> sum.append(flow.sign() < 0 ? " − " : " + ")
                .append(flow.amount())
                .append(" ")
                .append(flow.words()));
        String others = otherUnits == 0 ? "" : " What went out in other units is not counted here.";
        return new Draft(sheet, inquiry, "lot " + lot, opening.entry().head().doneOn())
                .lots(List.of(lot))
                .restsOn(opening.entry())
                .restsOn(flows.stream().map(flow -> flow.entry().number()).toList())
                .counting(sum + " = " + result)
                .settledBy(
                        "Look for a line put to the wrong lot, a weight written down wrong, or a harvest that was not entered, and"
                                + " correct it.")
                .says(
                        Outcome.ASK,
                        Wording.capital(crop(opening.entry()).name()) + ", lot " + lot
                                + ": more went out than came in, " + result + " on paper." + others);
    }
}

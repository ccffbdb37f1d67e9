package bedledger.projections.findings;

import bedledger.language.CropName;
import bedledger.language.Harvesting;
import bedledger.language.LotAccount;
import bedledger.language.LotMove;
import bedledger.language.Unit;
import bedledger.language.WorkOrder;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What is counted in store is what came in less what went out: 7 CFR 205.403(d)(4). No tolerance is set, so it is told, not judged. */
record StoreBalance(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Harvesting.StoreCounted.class).stream()
                .collect(Collectors.groupingBy(
                        done -> done.fact().crop(),
                        () -> new java.util.TreeMap<>(Comparator.comparing(CropName::name)),
                        Collectors.toList()))
                .values()
                .stream()
                // A count of one place among several says nothing of the whole.
                .filter(counts -> counts.stream()
                                .map(count -> String.valueOf(count.fact().where()))
                                .distinct()
                                .count()
                        == 1)
                .flatMap(counts -> judge(inquiry, counts))
                .toList();
    }

    /** Each count of one crop, from the count before it. */
    private Stream<Finding> judge(Inquiry inquiry, List<Done<Harvesting.StoreCounted>> counts) {
        CropName crop = counts.get(0).fact().crop();
        List<LotAccount> accounts = inquiry.farm().lots().stream()
                .filter(lot -> inquiry.lineage().crop(lot).filter(crop::equals).isPresent())
                .map(lot -> LotAccount.of(inquiry.farm(), lot, inquiry.asOf()))
                .toList();
        return IntStream.range(0, counts.size())
                .mapToObj(place ->
                        finding(inquiry, accounts, place == 0 ? null : counts.get(place - 1), counts.get(place)))
                .flatMap(Optional::stream);
    }

    private Optional<Finding> finding(
            Inquiry inquiry,
            List<LotAccount> accounts,
            @Nullable Done<Harvesting.StoreCounted> before,
            Done<Harvesting.StoreCounted> count) {
        Unit unit = count.fact().quantity().quantity().unit();
        Sum sum = new Sum(unit);
        if (before != null) {
            if (before.fact().quantity().quantity().unit().dimension() != unit.dimension()) {
                return Optional.empty();
            }
            sum.open(before.fact().quantity().quantity());
        }
        for (LotAccount account : accounts) {
            account.moves().stream()
                    .filter(move -> WorkOrder.OF_WORK.compare(move.entry(), count.entry()) < 0)
                    .filter(move -> before == null || WorkOrder.OF_WORK.compare(move.entry(), before.entry()) > 0)
                    .forEach(move -> sum.add(account, move));
        }
        return sum.nothing() ? Optional.empty() : Optional.of(told(inquiry, count, before, sum));
    }

    private Finding told(
            Inquiry inquiry,
            Done<Harvesting.StoreCounted> count,
            @Nullable Done<Harvesting.StoreCounted> before,
            Sum sum) {
        BigDecimal counted = Sum.in(count.fact().quantity().quantity(), sum.unit());
        BigDecimal off = counted.subtract(sum.left());
        String apart =
                sum.apart() == 0 ? "" : " What moved in other units is not counted here (" + sum.apart() + " moves).";
        String first = before != null || sum.found() || sum.came().signum() == 0
                ? ""
                : " No count stands before it: what may have been in store then is not in it.";
        Draft draft = new Draft(sheet, inquiry, count.fact().crop() + " in store", count.day())
                .restsOn(count.entry())
                .restsOn(before == null ? List.of() : List.of(before.number()))
                .restsOn(sum.entries())
                .counting(sum.words() + " = " + Sum.plain(sum.left()) + " "
                        + sum.unit().symbol() + " expected; " + Sum.plain(counted) + " counted");
        String what = Wording.capital(count.fact().crop().name()) + " counted on " + count.day() + ": ";
        if (off.signum() == 0 && apart.isEmpty()) {
            return draft.says(Outcome.MET, what + "as much as the book expects." + first);
        }
        String share = sum.came().signum() > 0
                ? " ("
                        + Sum.plain(
                                off.abs().multiply(BigDecimal.valueOf(100)).divide(sum.came(), 2, RoundingMode.HALF_UP))
                        + " % of what there was to account for)"
                : "";
        return draft.settledBy(
                        "Look for a loss, a gift or a sale that was not entered, or a wrong weight. The rule sets no tolerance; the"
                                + " inspector judges what is left unexplained.")
                .says(
                        Outcome.ASK,
                        what + Sum.plain(off.abs()) + " " + sum.unit().symbol() + (off.signum() < 0 ? " less" : " more")
                                + " than the book expects" + share + "." + first + apart);
    }

    /** What came in and went out, in one unit. */
    private static final class Sum {
        private final Unit unit;
        private final Map<LotMove.Way, BigDecimal> ways = new EnumMap<>(LotMove.Way.class);
        private final List<Long> entries = new ArrayList<>();
        private BigDecimal open = BigDecimal.ZERO;
        private boolean opened;
        private int apart;

        Sum(Unit unit) {
            this.unit = unit;
        }

        void open(bedledger.language.Quantity quantity) {
            open = in(quantity, unit);
            opened = true;
        }

        /** Lots put into one another cancel out within a crop. */
        void add(LotAccount account, LotMove move) {
            LotAccount.Left moved = account.sum(List.of(move), unit);
            if (!moved.apart().isEmpty()) {
                apart++;
                return;
            }
            ways.merge(move.way(), moved.number().abs(), BigDecimal::add);
            entries.add(move.entry().number());
        }

        static BigDecimal in(bedledger.language.Quantity quantity, Unit unit) {
            return quantity.inBase().divide(unit.factor(), java.math.MathContext.DECIMAL64);
        }

        static String plain(BigDecimal number) {
            return number.setScale(
                            Math.min(3, Math.max(0, number.stripTrailingZeros().scale())), RoundingMode.HALF_UP)
                    .toPlainString()
                    .replace('-', '−');
        }

        Unit unit() {
            return unit;
        }

        int apart() {
            return apart;
        }

        List<Long> entries() {
            return entries;
        }

        boolean found() {
            return ways.containsKey(LotMove.Way.FOUND);
        }

        boolean nothing() {
            return ways.isEmpty() && !opened;
        }

        /** What came in from outside; what lots took from one another came in once already. */
        BigDecimal came() {
            BigDecimal all = ways.entrySet().stream()
                    .filter(way -> way.getKey().sign() > 0)
                    .map(Map.Entry::getValue)
                    .reduce(open, BigDecimal::add);
            return all.subtract(
                    of(LotMove.Way.INTO_ANOTHER).min(of(LotMove.Way.JOINED).add(of(LotMove.Way.SPLIT_OFF))));
        }

        private BigDecimal of(LotMove.Way way) {
            return ways.getOrDefault(way, BigDecimal.ZERO);
        }

        BigDecimal left() {
            return ways.entrySet().stream()
                    .map(way -> way.getValue()
                            .multiply(BigDecimal.valueOf(way.getKey().sign())))
                    .reduce(open, BigDecimal::add);
        }

        String words() {
            StringBuilder words = new StringBuilder(opened ? plain(open) + " counted before" : "");
            ways.forEach((way, number) -> words.append(words.isEmpty() ? "" : way.sign() < 0 ? " − " : " + ")
                    .append(plain(number))
                    .append(" ")
                    .append(way.words()));
            return words.toString();
        }
    }
}

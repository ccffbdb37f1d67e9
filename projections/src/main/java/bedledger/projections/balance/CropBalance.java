package bedledger.projections.balance;

import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Harvesting;
import bedledger.language.Lineage;
import bedledger.language.LotAccount;
import bedledger.language.LotId;
import bedledger.language.LotMove;
import bedledger.language.LotMove.Way;
import bedledger.language.NaturalOrder;
import bedledger.language.Unit;
import bedledger.projections.balance.Balance.Line;
import bedledger.projections.balance.Balance.Part;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The balance of a crop, and its lots on paper at the end.
 *
 * @param lots every lot of that crop, by name, with all that ever went in and out of it by the last day
 */
public record CropBalance(CropName crop, Balance balance, List<LotAccount> lots) {
    public CropBalance {
        lots = List.copyOf(lots);
    }

    /** Between two days, see {@link Period}; {@code today} is the last day that counts. */
    public static CropBalance of(
            Farm farm, CropName crop, @Nullable LocalDate from, @Nullable LocalDate to, LocalDate today) {
        List<Entry> counts = farm.ofKind(Harvesting.StoreCounted.class).stream()
                .filter(entry -> ((Harvesting.StoreCounted) entry.fact()).crop().equals(crop))
                .filter(entry -> !entry.head().doneOn().isAfter(today))
                .toList();
        Lineage all = Lineage.of(farm, today);
        Stream<LocalDate> seen = farm.lots().stream()
                .filter(lot -> all.crop(lot).filter(crop::equals).isPresent())
                .flatMap(lot -> farm.entries(lot).stream())
                .map(entry -> entry.head().doneOn());
        Period period = Period.of(counts, CropBalance::figure, seen, from, to, today);
        Lineage lineage = Lineage.of(farm, period.to());
        List<LotAccount> lots = farm.lots().stream()
                .filter(lot -> lineage.crop(lot).filter(crop::equals).isPresent())
                .sorted(Comparator.comparing(LotId::toString, NaturalOrder.INSTANCE))
                .map(lot -> LotAccount.of(farm, lot, period.to()))
                .toList();
        return new CropBalance(crop, new Sums(period, lineage, crop, lots).balance(counts), lots);
    }

    private static Count.Figure figure(Entry entry) {
        Harvesting.StoreCounted counted = (Harvesting.StoreCounted) entry.fact();
        return new Count.Figure(counted.quantity(), counted.where() == null ? "" : counted.where());
    }

    /** The lots of which more went out than came in. */
    public List<LotAccount> oversold() {
        return lots.stream()
                .filter(lot ->
                        lot.left().filter(left -> left.number().signum() < 0).isPresent())
                .toList();
    }

    /** Adds up the moves of the period. */
    private static final class Sums {
        private final Period period;
        private final Lineage lineage;
        private final CropName crop;
        private final List<LotAccount> lots;
        private final Unit unit;
        private final List<String> apart = new ArrayList<>();
        /** What was measured again where lots of the crop were joined: what the new lot holds less what went into it. */
        private BigDecimal again = BigDecimal.ZERO;

        private final List<Part> measured = new ArrayList<>();

        Sums(Period period, Lineage lineage, CropName crop, List<LotAccount> lots) {
            this.period = period;
            this.lineage = lineage;
            this.crop = crop;
            this.lots = lots;
            this.unit = period.unit()
                    .or(() -> lots.stream().flatMap(lot -> lot.unit().stream()).findFirst())
                    .orElse(Unit.KG);
        }

        Balance balance(List<Entry> counts) {
            Map<String, Line> in = new LinkedHashMap<>();
            Map<String, Line> out = new LinkedHashMap<>();
            for (Way way : Way.values()) {
                for (LotAccount lot : lots) {
                    lot.moves(way).stream()
                            .filter(move -> period.holds(move.entry()))
                            .forEach(move -> add(lot, move, move.way().sign() > 0 ? in : out));
                }
            }
            List<Line> lines = new ArrayList<>(in.values());
            lines.addAll(out.values());
            if (again.signum() != 0) {
                lines.add(new Line("measured again when joined", again.signum(), again.abs(), measured));
            }
            List<String> missing = new ArrayList<>(period.missing(crop.name(), counts));
            missing.addAll(apart);
            return new Balance(
                    crop.name(),
                    period.from(),
                    period.to(),
                    unit,
                    period.count(period.opening(), unit),
                    period.count(period.closing(), unit),
                    lines,
                    missing);
        }

        private void add(LotAccount lot, LotMove move, Map<String, Line> lines) {
            LotAccount.Left sum = lot.sum(List.of(move), unit);
            if (!sum.apart().isEmpty()) {
                apart.add("#" + move.entry().number() + ", " + lot.lot() + ": " + move.amount() + " "
                        + move.way().words() + " is not counted: nothing on record turns it into " + unit.symbol()
                        + ".");
                return;
            }
            Part part = new Part(
                    move.entry().number(),
                    move.entry().head().doneOn(),
                    lot.lot().toString(),
                    move.amount());
            if (isWithin(move)) {
                again = again.add(sum.number());
                measured.add(part);
                return;
            }
            lines.merge(
                    words(move),
                    new Line(words(move), move.way().sign(), sum.number().abs(), List.of(part)),
                    Sums::both);
        }

        /** Whether it only goes from one lot of the crop to another. */
        private boolean isWithin(LotMove move) {
            return switch (move.way()) {
                case JOINED, SPLIT_OFF -> true;
                case INTO_ANOTHER ->
                    Optional.ofNullable(move.other())
                            .flatMap(lineage::crop)
                            .filter(crop::equals)
                            .isPresent();
                default -> false;
            };
        }

        private static Line both(Line one, Line more) {
            List<Part> parts = new ArrayList<>(one.parts());
            parts.addAll(more.parts());
            return new Line(one.words(), one.sign(), one.sum().add(more.sum()), parts);
        }

        private static String words(LotMove move) {
            if (move.entry().fact() instanceof Harvesting.LotLost lost) {
                return "lost, " + lost.cause() + (lost.to() == null ? "" : ", to " + lost.to());
            }
            return switch (move.way()) {
                case INTO_ANOTHER -> "put into lots of several crops";
                case FOUND -> "found in store";
                case TAKEN_BACK -> "taken back from customers";
                case DONATED -> "given away";
                default -> move.way().words();
            };
        }
    }
}

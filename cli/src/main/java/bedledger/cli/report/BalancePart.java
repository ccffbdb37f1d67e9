package bedledger.cli.report;

import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Harvesting;
import bedledger.language.LotAccount;
import bedledger.language.LotId;
import bedledger.language.LotMove;
import bedledger.language.MaterialName;
import bedledger.language.NaturalOrder;
import bedledger.projections.balance.Balance;
import bedledger.projections.balance.CropBalance;
import bedledger.projections.balance.MaterialBalance;
import bedledger.projections.balance.Plausible;
import bedledger.projections.stock.StockMoves;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** The mass balance of every crop sold, its lots on paper, whether seed and area bear it; and of every material that was received. */
final class BalancePart {
    private final Asked asked;
    private final List<CropPart> crops = new ArrayList<>();
    private final List<BalanceTable> materials = new ArrayList<>();
    private final SortedSet<CropName> neverSold = new TreeSet<>(Comparator.comparing(CropName::name));

    BalancePart(Asked asked) {
        this.asked = asked;
        SortedSet<CropName> sold = new TreeSet<>(Comparator.comparing(CropName::name));
        for (LotId lot : asked.farm().lots()) {
            List<LotMove> moves = account(lot).moves();
            asked.lineage()
                    .crop(lot)
                    .ifPresent(crop -> (moves.stream().anyMatch(move -> move.way() == LotMove.Way.SOLD)
                                    ? sold
                                    : neverSold)
                            .add(crop));
        }
        neverSold.removeAll(sold);
        sold.forEach(crop -> crops.add(part(crop)));
        asked.farm().places().stream()
                .filter(MaterialName.class::isInstance)
                .map(MaterialName.class::cast)
                .filter(material ->
                        !StockMoves.of(asked.farm(), material, asked.day()).isEmpty())
                .sorted(Comparator.comparing(MaterialName::name, NaturalOrder.INSTANCE))
                .forEach(material -> materials.add(new BalanceTable(
                        asked,
                        "balance-material-" + (materials.size() + 1),
                        MaterialBalance.of(asked.farm(), material, null, null, asked.day()))));
    }

    private LotAccount account(LotId lot) {
        return LotAccount.of(asked.farm(), lot, asked.day());
    }

    /** One crop: the arithmetic, its lots, and from seed to sale. */
    record CropPart(
            String name, String period, BalanceTable balance, Table lots, List<Phrase> remarks, List<Phrase> seed) {
        boolean isRemarked() {
            return !remarks.isEmpty();
        }
    }

    private CropPart part(CropName crop) {
        CropBalance balanced = balanced(crop);
        String id = "balance-" + (crops.size() + 1);
        BalanceTable table = new BalanceTable(asked, id, balanced.balance());
        LocalDate from = balanced.balance().from();
        LocalDate to = balanced.balance().to();
        return new CropPart(
                crop.name(),
                from + " to " + to,
                table,
                new BalanceLots(asked, balanced).table(id + "-lots"),
                remarks(table, balanced),
                new SeedToSale(asked, balanced.balance(), Plausible.of(asked.farm(), asked.tables(), crop, from, to))
                        .lines());
    }

    /**
     * Between the counts as the command chooses them; where the store was counted once and something moved since, from that count to the
     * day asked.
     */
    private CropBalance balanced(CropName crop) {
        List<LocalDate> counts = asked.farm().ofKind(Harvesting.StoreCounted.class).stream()
                .filter(entry -> ((Harvesting.StoreCounted) entry.fact()).crop().equals(crop))
                .map(entry -> entry.head().doneOn())
                .filter(day -> !day.isAfter(asked.day()))
                .distinct()
                .toList();
        boolean open = counts.size() == 1
                && !movesAfter(crop, counts.get(0)).isEmpty()
                && counts.get(0).isBefore(asked.day());
        return open
                ? CropBalance.of(asked.farm(), crop, counts.get(0), asked.day(), asked.day())
                : CropBalance.of(asked.farm(), crop, null, null, asked.day());
    }

    private List<Long> movesAfter(CropName crop, LocalDate day) {
        return asked.farm().lots().stream()
                .filter(lot -> asked.lineage().crop(lot).filter(crop::equals).isPresent())
                .map(this::account)
                .map(LotAccount::moves)
                .flatMap(Collection::stream)
                .map(LotMove::entry)
                .filter(entry -> entry.head().doneOn().isAfter(day))
                .map(Entry::number)
                .distinct()
                .sorted()
                .toList();
    }

    private List<Phrase> remarks(BalanceTable table, CropBalance balanced) {
        List<Phrase> remarks = new ArrayList<>(table.missing());
        LocalDate to = balanced.balance().to();
        if (to.isBefore(asked.day())) {
            remarks.add(after(balanced.crop(), to));
        }
        byLot(balanced).ifPresent(remarks::add);
        balanced.oversold()
                .forEach(lot -> remarks.add(Phrase.strong("More went out than it held")
                        .plus(": ")
                        .plus(asked.links().place(lot.lot()))
                        .plus(", " + lot.left().orElseThrow() + " on paper.")));
        return remarks;
    }

    /** A balance from count to count may agree while the lots say otherwise: both sums are told. */
    private static Optional<Phrase> byLot(CropBalance balanced) {
        Balance balance = balanced.balance();
        List<LotAccount.Left> left =
                balanced.lots().stream().flatMap(lot -> lot.left().stream()).toList();
        boolean alike = left.stream()
                .allMatch(each -> each.unit() == balance.unit() && each.apart().isEmpty());
        BigDecimal sum = left.stream().map(LotAccount.Left::number).reduce(BigDecimal.ZERO, BigDecimal::add);
        return balance.closing()
                .filter(count -> alike && count.number().compareTo(sum) != 0)
                .map(count -> Phrase.strong("By lot")
                        .plus(": " + quantity(sum, balance) + " is left on paper in all lots together, and "
                                + quantity(count.number(), balance) + " was counted on " + count.day() + "."));
    }

    private static String quantity(BigDecimal number, Balance balance) {
        return BalanceTable.number(number) + " " + balance.unit().symbol();
    }

    /** A balance ends with the last count; what lies between it and the day asked is said, not guessed. */
    private Phrase after(CropName crop, LocalDate to) {
        List<Long> moved = movesAfter(crop, to);
        Phrase said = Phrase.strong("To " + asked.day() + " incomplete")
                .plus(": the store was not counted after " + to + "; what came in or went out since, ");
        return said.plus(
                        moved.isEmpty()
                                ? Phrase.of("none on record,")
                                : asked.links().entries(moved).plus(","))
                .plus(" is not in it.");
    }

    List<CropPart> crops() {
        return List.copyOf(crops);
    }

    List<BalanceTable> materials() {
        return List.copyOf(materials);
    }

    boolean hasMaterials() {
        return !materials.isEmpty();
    }

    Table inShort() {
        return Table.of(
                "table-balances",
                "Every crop sold, in short",
                "No sale is on record.",
                List.of(
                        "crop",
                        "from, to",
                        "counted at first",
                        "came in",
                        "went out",
                        "should be there",
                        "counted",
                        "difference",
                        "lots sold beyond what they held"),
                crops.stream().map(this::inShort).toList());
    }

    private Row inShort(CropPart crop) {
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(Phrase.link(crop.name(), crop.balance().anchor())).asHeader(), Cell.of(crop.period())));
        cells.addAll(crop.balance().figures());
        cells.add(Cell.of(asked.links()
                .places(balanced(new CropName(crop.name())).oversold().stream()
                        .map(LotAccount::lot)
                        .toList())));
        return Row.of(cells);
    }

    boolean hasNeverSold() {
        return !neverSold.isEmpty();
    }

    String neverSold() {
        return String.join(", ", neverSold.stream().map(CropName::name).toList());
    }
}

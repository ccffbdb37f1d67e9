package bedledger.cli.packet;

import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Harvesting;
import bedledger.language.Lineage;
import bedledger.language.LotAccount;
import bedledger.language.LotId;
import bedledger.language.LotMove;
import bedledger.language.LotMove.Way;
import bedledger.language.NaturalOrder;
import bedledger.language.Selling;
import bedledger.language.Words;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The harvest lots as a table: what came in, what went out, what is left on paper, and the entries behind it. */
final class LotTable {
    private static final List<String> HEADER = List.of(
            "lot",
            "crop",
            "began",
            "from",
            "came_in",
            "sold",
            "sold_as",
            "donated",
            "lost",
            "into_other_lots",
            "taken_back",
            "left_on_paper",
            "not_counted_in_it",
            "entries");

    static Output.Table of(ReadBook book, LocalDate day) {
        Lineage lineage = Lineage.of(book.farm(), day);
        return new Output.Table(
                HEADER,
                book.farm().lots().stream()
                        .sorted(Comparator.comparing(LotId::toString, NaturalOrder.INSTANCE))
                        .map(lot -> row(lot, LotAccount.of(book.farm(), lot, day), lineage))
                        .toList());
    }

    private static List<String> row(LotId lot, LotAccount account, Lineage lineage) {
        return List.of(
                lot.toString(),
                lineage.crop(lot).map(CropName::name).orElse(""),
                account.opening().map(entry -> entry.head().doneOn().toString()).orElse(""),
                from(account),
                amounts(account, account.began()),
                amounts(account, account.moves(Way.SOLD)),
                soldAs(account),
                amounts(account, account.moves(Way.DONATED)),
                amounts(account, account.moves(Way.LOST)),
                amounts(account, account.moves(Way.INTO_ANOTHER)),
                amounts(account, account.moves(Way.TAKEN_BACK)),
                account.left()
                        .map(left -> left.number().toPlainString() + " "
                                + left.unit().symbol())
                        .orElse(""),
                account.left().map(left -> listed(left.apart())).orElse(""),
                account.moves().stream()
                        .map(LotMove::entry)
                        .map(Entry::number)
                        .distinct()
                        .map(String::valueOf)
                        .collect(Collectors.joining(" ")));
    }

    /** The beds it was picked from, or the lots it was put together from or split off. */
    private static String from(LotAccount account) {
        return account.opening()
                .map(Entry::fact)
                .filter(Harvesting.Harvested.class::isInstance)
                .map(fact -> ((Harvesting.Harvested) fact)
                        .beds().stream().map(BedId::toString).collect(Collectors.joining(" ")))
                .orElseGet(() -> account.began().stream()
                        .flatMap(move -> Optional.ofNullable(move.other()).stream())
                        .map(LotId::toString)
                        .distinct()
                        .collect(Collectors.joining(" ")));
    }

    private static String soldAs(LotAccount account) {
        return account.moves(Way.SOLD).stream()
                .flatMap(move -> Stream.of(move.entry().fact()))
                .filter(Selling.Sold.class::isInstance)
                .map(fact -> Words.of(((Selling.Sold) fact).as()))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /** One sum in the unit the lot came in; what cannot be set against that unit stands beside it. */
    private static String amounts(LotAccount account, List<LotMove> moves) {
        if (moves.isEmpty() || account.unit().isEmpty()) {
            return listed(moves);
        }
        LotAccount.Left sum = account.sum(moves, account.unit().get());
        boolean nothing = sum.apart().size() == moves.size();
        String whole = nothing
                ? ""
                : sum.number().abs().toPlainString() + " " + sum.unit().symbol();
        return Stream.of(whole, listed(sum.apart()))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private static String listed(List<LotMove> moves) {
        return moves.stream().map(move -> move.amount().toString()).collect(Collectors.joining("; "));
    }

    private LotTable() {}
}

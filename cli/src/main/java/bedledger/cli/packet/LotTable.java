package bedledger.cli.packet;

import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Lineage;
import bedledger.language.LotAccount;
import bedledger.language.LotId;
import bedledger.language.LotMove;
import bedledger.language.LotMove.Way;
import bedledger.language.NaturalOrder;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The harvest lots as a table: what came in, what went out, what is left on paper, and the entries behind it. */
final class LotTable {
    private static final List<String> HEADER = List.of(
            "lot",
            "crop",
            "began",
            "came_in",
            "sold",
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
                amounts(account.began()),
                amounts(account.moves(Way.SOLD)),
                amounts(account.moves(Way.DONATED)),
                amounts(account.moves(Way.LOST)),
                amounts(account.moves(Way.INTO_ANOTHER)),
                amounts(account.moves(Way.TAKEN_BACK)),
                account.left()
                        .map(left -> left.number().toPlainString() + " "
                                + left.unit().symbol())
                        .orElse(""),
                account.left().map(left -> amounts(left.apart())).orElse(""),
                account.moves().stream()
                        .map(LotMove::entry)
                        .map(Entry::number)
                        .distinct()
                        .map(String::valueOf)
                        .collect(Collectors.joining(" ")));
    }

    private static String amounts(List<LotMove> moves) {
        return moves.stream().map(move -> move.amount().toString()).collect(Collectors.joining("; "));
    }

    private LotTable() {}
}

package bedledger.cli.report;

import bedledger.language.LotAccount;
import bedledger.language.LotMove;
import bedledger.language.Unit;
import bedledger.projections.balance.CropBalance;
import java.util.List;
import java.util.stream.Stream;

/** The lots of a crop on paper at the end of its balance; one of which more went out than came in stands out in words. */
record BalanceLots(Asked asked, CropBalance balanced) {
    Table table(String id) {
        return Table.of(
                id,
                "Lots of " + balanced.crop() + " on paper on "
                        + balanced.balance().to(),
                "No lot of it is on record.",
                List.of("lot", "came in", "went out", "left", "to be said", "entries"),
                balanced.lots().stream()
                        .filter(lot -> lot.unit().isPresent())
                        .map(this::row)
                        .toList());
    }

    private Row row(LotAccount lot) {
        Unit unit = lot.unit().orElseThrow();
        LotAccount.Left left = lot.left().orElseThrow();
        return Row.of(
                Cell.of(asked.links().place(lot.lot())).asHeader(),
                Cell.number(sum(lot, 1, unit)),
                Cell.number(sum(lot, -1, unit).replace("−", "")),
                Cell.number(left.toString()),
                Cell.of(Stream.of(beyond(left), apart(left)).toList()),
                Cell.of(asked.links()
                        .entries(lot.moves().stream()
                                .map(move -> move.entry().number())
                                .distinct()
                                .toList())));
    }

    private static String sum(LotAccount lot, int sign, Unit unit) {
        List<LotMove> moves =
                lot.moves().stream().filter(move -> move.way().sign() == sign).toList();
        return BalanceTable.number(lot.sum(moves, unit).number()) + " " + unit.symbol();
    }

    private static Phrase beyond(LotAccount.Left left) {
        return left.number().signum() < 0 ? Phrase.strong("more went out than it held") : Phrase.NONE;
    }

    private static Phrase apart(LotAccount.Left left) {
        return left.apart().isEmpty()
                ? Phrase.NONE
                : Phrase.of("not counted: "
                        + String.join(
                                ", ",
                                left.apart().stream()
                                        .map(move -> move.amount().toString())
                                        .toList()));
    }
}

package bedledger.cli.report;

import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.LotAccount;
import bedledger.language.LotId;
import bedledger.language.LotMove;
import bedledger.language.LotMove.Way;
import bedledger.language.NaturalOrder;
import bedledger.language.Selling;
import bedledger.language.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Harvest lots, and where each went; the store as counted; cleaning. */
record LotsPart(Asked asked, EntryTables tables, FindingLines findings) {
    static final List<Class<? extends Fact>> KINDS = List.of(
            Harvesting.StoreCounted.class, Harvesting.EquipmentCleaned.class, Harvesting.EquipmentCalibrated.class);
    private static final Set<Class<? extends Fact>> HANDLING =
            Set.of(Harvesting.LotsWashed.class, Harvesting.LotPacked.class, Harvesting.LotStored.class);
    /** So many rows are made at once, so that columns in which nothing stands can be left out. */
    private static final int FEW = 2_000;

    private static final List<String> COLUMNS = List.of(
            "lot",
            "crop, quantity",
            "harvested",
            "washed, packed, stored",
            "sold",
            "given away or lost",
            "into other lots",
            "came back",
            "left on paper",
            "findings",
            "entry");

    Table lots() {
        List<LotId> lots = asked.links().shown().stream()
                .filter(LotId.class::isInstance)
                .map(LotId.class::cast)
                .sorted(Comparator.comparing(LotId::toString, NaturalOrder.INSTANCE))
                .toList();
        String caption = "Harvest lots up to " + asked.day() + ", and where each went";
        if (lots.size() <= FEW) {
            return EntryTables.table(
                    "table-lots",
                    caption,
                    "No lot is on record.",
                    COLUMNS,
                    lots.stream().map(this::row).toList());
        }
        Iterable<Row> rows = () -> rows(lots);
        return Table.over("table-lots", caption, "No lot is on record.", COLUMNS, true, rows);
    }

    private Iterator<Row> rows(List<LotId> lots) {
        return lots.stream().map(this::row).iterator();
    }

    private Row row(LotId lot) {
        List<Entry> entries = asked.entries(lot);
        LotAccount account = LotAccount.of(lot, entries);
        List<Phrase> out = new ArrayList<>(moves(account, Way.DONATED, "given away"));
        out.addAll(moves(account, Way.LOST, "lost"));
        return Row.of(
                        Cell.of(Phrase.unbroken(lot.toString())).asHeader(),
                        Cell.of(account.opening()
                                .map(entry -> crop(account, entry))
                                .orElse(Phrase.of("no harvest of it is in force"))),
                        Cell.of(account.opening().map(this::began).orElse(Phrase.NONE)),
                        Cell.of(handled(entries)),
                        Cell.of(moves(account, Way.SOLD, "")),
                        Cell.of(out),
                        Cell.of(moves(account, Way.INTO_ANOTHER, "")),
                        Cell.of(moves(account, Way.TAKEN_BACK, "")),
                        Cell.of(account.left().map(LotsPart::left).orElse("not known")),
                        Cell.of(findings.phrases(lot)),
                        Cell.of(asked.links()
                                .entries(account.opening().stream()
                                        .map(Entry::number)
                                        .toList())))
                .anchored(Links.anchor(lot));
    }

    private Phrase crop(LotAccount account, Entry opening) {
        boolean simple =
                opening.fact() instanceof Harvesting.Harvested || opening.fact() instanceof Harvesting.LotFound;
        String crop = asked.lineage().crop(account.lot()).map(CropName::name).orElse("several crops");
        return simple
                ? tables.cells().parts().what(opening.fact())
                : Phrase.of(crop
                        + account.unit()
                                .map(unit -> "; " + left(account.sum(account.began(), unit)))
                                .orElse(""));
    }

    private Phrase began(Entry entry) {
        Phrase day = Phrase.whole(entry.head().doneOn().toString());
        if (entry.fact() instanceof Harvesting.LotsJoined joined) {
            return day.plus(" joined from ")
                    .plus(Phrase.joined(
                            joined.lots().stream()
                                    .map(part -> asked.links().place(part.lot()).plus(" " + part.quantity()))
                                    .toList(),
                            ", "));
        }
        if (entry.fact() instanceof Harvesting.LotSplit split) {
            return day.plus(" split off ").plus(asked.links().place(split.lot()));
        }
        String how = entry.fact() instanceof Harvesting.LotFound ? " found in store" : " from ";
        return day.plus(how).plus(tables.cells().parts().where(entry.fact()));
    }

    private static String left(LotAccount.Left left) {
        return Stream.concat(
                        Stream.of(left.toString()),
                        left.apart().stream().map(move -> (move.way().sign() < 0 ? "less " : "plus ") + move.amount()))
                .collect(Collectors.joining(", "));
    }

    private List<Phrase> handled(List<Entry> entries) {
        return entries.stream()
                .filter(entry -> HANDLING.contains(entry.fact().getClass()))
                .map(entry -> Phrase.of(entry.head().doneOn() + " " + FactParts.operation(entry.fact()) + " ")
                        .plus(tables.cells().parts().what(entry.fact()))
                        .plus(" ")
                        .plus(asked.links().entry(entry.number())))
                .toList();
    }

    private List<Phrase> moves(LotAccount account, Way way, String how) {
        return account.moves(way).stream()
                .map(move -> words(move, how)
                        .plus(" ")
                        .plus(asked.links().entry(move.entry().number())))
                .toList();
    }

    private Phrase words(LotMove move, String how) {
        Phrase said = Phrase.of(move.amount() + (how.isEmpty() ? "" : " " + how));
        Fact fact = move.entry().fact();
        if (fact instanceof Selling.Sold sold) {
            String paper = sold.invoice() == null ? "no invoice recorded" : "invoice " + sold.invoice();
            return said.plus(" as " + Words.of(sold.as()).replace('-', ' ') + ", " + paper);
        }
        if (fact instanceof Selling.Donated donated) {
            return donated.to() == null ? said : said.plus(", to " + donated.to());
        }
        if (fact instanceof Harvesting.LotLost lost) {
            return said.plus(", " + lost.cause() + (lost.to() == null ? "" : ", to " + lost.to()));
        }
        if (move.other() != null) {
            return said.plus(" into ").plus(asked.links().place(move.other()));
        }
        return fact instanceof Selling.CustomerReturned back && back.why() != null
                ? said.plus(", " + back.why())
                : said;
    }

    Table counts() {
        return tables.ofKind(
                "table-counts",
                "The store as counted",
                "The store was not counted, as far as the book says.",
                Harvesting.StoreCounted.class);
    }

    Table calibrations() {
        return tables.ofKind(
                "table-calibrations",
                "Scales, sprayers and thermometers checked",
                "No check of a scale or sprayer is on record.",
                Harvesting.EquipmentCalibrated.class);
    }

    Table cleaning() {
        return tables.ofKind(
                "table-cleaning",
                "Tools, crates and wash lines cleaned",
                "No cleaning is on record.",
                Harvesting.EquipmentCleaned.class);
    }
}

package bedledger.cli.report;

import bedledger.cli.report.LotAccount.Move;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.LotId;
import bedledger.language.NaturalOrder;
import bedledger.language.Selling;
import bedledger.language.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;

/** Harvest lots, and where each went; the store as counted; cleaning. */
record LotsPart(Asked asked, EntryTables tables, FindingLines findings) {
    static final List<Class<? extends Fact>> KINDS =
            List.of(Harvesting.StoreCounted.class, Harvesting.EquipmentCleaned.class);
    private static final List<String> COLUMNS = List.of(
            "lot",
            "crop, quantity",
            "harvested",
            "stored",
            "sold",
            "given away or lost",
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
        Iterable<Row> rows = () -> rows(lots);
        return Table.over(
                "table-lots",
                "Harvest lots up to " + asked.day() + ", and where each went",
                "No lot is on record.",
                COLUMNS,
                !lots.isEmpty(),
                rows);
    }

    private Iterator<Row> rows(List<LotId> lots) {
        return lots.stream().map(this::row).iterator();
    }

    private Row row(LotId lot) {
        List<Entry> entries = asked.entries(lot);
        LotAccount account = LotAccount.of(lot, entries);
        List<Phrase> out = new ArrayList<>(moves(account, Selling.Donated.class, "given away"));
        out.addAll(moves(account, Harvesting.LotLost.class, "lost"));
        return Row.of(
                        Cell.of(lot.toString()).asHeader(),
                        Cell.of(account.opening()
                                .map(entry -> tables.cells().parts().what(entry.fact()))
                                .orElse(Phrase.of("no harvest of it is in force"))),
                        Cell.of(account.opening().map(this::harvested).orElse(Phrase.NONE)),
                        Cell.of(stored(entries)),
                        Cell.of(moves(account, Selling.Sold.class, "")),
                        Cell.of(out),
                        Cell.of(moves(account, Selling.CustomerReturned.class, "")),
                        Cell.of(account.left().orElse("not known")),
                        Cell.of(findings.phrases(lot)),
                        Cell.of(asked.links()
                                .entries(account.opening().stream()
                                        .map(Entry::number)
                                        .toList())))
                .anchored(Links.anchor(lot));
    }

    private Phrase harvested(Entry entry) {
        String how = entry.fact() instanceof Harvesting.LotFound ? " found in store" : " from ";
        return Phrase.whole(entry.head().doneOn().toString())
                .plus(how)
                .plus(tables.cells().parts().where(entry.fact()));
    }

    private List<Phrase> stored(List<Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.fact() instanceof Harvesting.LotStored)
                .map(entry -> Phrase.of(entry.head().doneOn() + " ")
                        .plus(tables.cells().parts().what(entry.fact()))
                        .plus(" ")
                        .plus(asked.links().entry(entry.number())))
                .toList();
    }

    private List<Phrase> moves(LotAccount account, Class<? extends Fact> kind, String how) {
        return account.moves(kind).stream()
                .map(move -> Phrase.of(words(move, how) + " ")
                        .plus(asked.links().entry(move.entry().number())))
                .toList();
    }

    private static String words(Move move, String how) {
        String said = move.amount() + (how.isEmpty() ? "" : " " + how);
        Fact fact = move.entry().fact();
        if (fact instanceof Selling.Sold sold) {
            String paper = sold.invoice() == null ? "no invoice recorded" : "invoice " + sold.invoice();
            return said + " as " + Words.of(sold.as()).replace('-', ' ') + ", " + paper;
        }
        if (fact instanceof Selling.Donated donated) {
            return donated.to() == null ? said : said + ", to " + donated.to();
        }
        if (fact instanceof Harvesting.LotLost lost) {
            return said + ", " + lost.cause() + (lost.to() == null ? "" : ", to " + lost.to());
        }
        return fact instanceof Selling.CustomerReturned back && back.why() != null ? said + ", " + back.why() : said;
    }

    Table counts() {
        return tables.ofKind(
                "table-counts",
                "The store as counted",
                "The store was not counted, as far as the book says.",
                Harvesting.StoreCounted.class);
    }

    Table cleaning() {
        return tables.ofKind(
                "table-cleaning",
                "Tools, crates and wash lines cleaned",
                "No cleaning is on record.",
                Harvesting.EquipmentCleaned.class);
    }
}

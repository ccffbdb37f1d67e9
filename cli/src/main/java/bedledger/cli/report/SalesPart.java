package bedledger.cli.report;

import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.NaturalOrder;
import bedledger.language.Selling;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Sales by invoice, with what came back on each; and what was given away. */
record SalesPart(Asked asked, EntryTables tables) {
    static final List<Class<? extends Fact>> KINDS =
            List.of(Selling.Sold.class, Selling.Donated.class, Selling.CustomerReturned.class);
    /** Sorts behind every invoice. */
    private static final String NO_INVOICE = "\uffff";

    Table invoices() {
        Map<String, List<Entry>> invoices = new TreeMap<>(NaturalOrder.INSTANCE);
        asked.ofKinds(List.of(Selling.Sold.class, Selling.CustomerReturned.class))
                .forEach(entry -> invoices.computeIfAbsent(invoice(entry.fact()), name -> new ArrayList<>())
                        .add(entry));
        List<Row> rows = new ArrayList<>();
        invoices.forEach((name, entries) -> entries.forEach(entry -> rows.add(row(name, entry))));
        return EntryTables.table(
                "table-invoices",
                "Sales by invoice, and what customers brought back",
                "No sale is on record.",
                List.of(
                        "invoice",
                        "date",
                        "what",
                        "lots, each with how much",
                        "as, to whom, price, why",
                        "who",
                        "files",
                        "written (lag)",
                        "corrected?",
                        "entry"),
                rows);
    }

    private static String invoice(Fact fact) {
        @Nullable
        String invoice =
                fact instanceof Selling.Sold sold ? sold.invoice() : ((Selling.CustomerReturned) fact).invoice();
        return invoice == null ? NO_INVOICE : invoice;
    }

    private Row row(String invoice, Entry entry) {
        AuditCells cells = tables.cells();
        return cells.marked(
                entry,
                List.of(
                        Cell.of(invoice.equals(NO_INVOICE) ? "none recorded" : invoice)
                                .asHeader(),
                        Cell.whole(entry.head().doneOn().toString()),
                        Cell.of(entry.fact() instanceof Selling.Sold ? "sold" : "came back"),
                        Cell.of(cells.parts().input(entry.fact())),
                        cells.what(entry),
                        cells.who(entry),
                        cells.files(entry),
                        cells.written(entry),
                        cells.corrected(entry),
                        cells.number(entry)));
    }

    Table donations() {
        return tables.ofKind("table-donations", "Given away", "Nothing was given away.", Selling.Donated.class);
    }
}

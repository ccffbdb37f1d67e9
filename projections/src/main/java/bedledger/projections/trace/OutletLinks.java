package bedledger.projections.trace;

import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Harvesting;
import bedledger.language.Lineage;
import bedledger.language.LotAccount;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import bedledger.language.Selling;
import bedledger.language.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Where lots went: invoices, gifts, losses, what came back, and the store as last counted. */
final class OutletLinks {
    private final Graph graph;
    private final Book book;

    private OutletLinks(Graph graph, Book book) {
        this.graph = graph;
        this.book = book;
    }

    static void into(Graph graph, Book book) {
        OutletLinks links = new OutletLinks(graph, book);
        links.sales();
        book.done(Selling.Donated.class)
                .forEach(entry -> links.outlet(
                        entry,
                        Node.Kind.GIFT,
                        "given away " + entry.head().doneOn(),
                        to(((Selling.Donated) entry.fact()).to()),
                        ((Selling.Donated) entry.fact()).lots()));
        book.done(Harvesting.LotLost.class).forEach(links::lost);
        book.done(Selling.CustomerReturned.class).forEach(links::back);
        links.store();
    }

    static String invoice(Entry entry, Selling.Sold sold) {
        return sold.invoice() == null ? "sale:" + entry.number() : "invoice:" + sold.invoice();
    }

    private void sales() {
        Map<String, List<Entry>> invoices = new LinkedHashMap<>();
        for (Entry entry : book.done(Selling.Sold.class)) {
            invoices.computeIfAbsent(Graph.sale(entry), id -> new ArrayList<>()).add(entry);
        }
        invoices.forEach((id, entries) -> graph.add(sale(id, entries)));
        for (Entry entry : book.done(Selling.Sold.class)) {
            parts(entry, Graph.sale(entry), ((Selling.Sold) entry.fact()).lots());
        }
    }

    private static Node sale(String id, List<Entry> entries) {
        Entry first = entries.get(0);
        Selling.Sold sold = (Selling.Sold) first.fact();
        return new Node(
                id,
                Node.Kind.SALE,
                sold.invoice() == null ? "sale without an invoice" : "invoice " + sold.invoice(),
                "sold " + first.head().doneOn() + " as " + Words.of(sold.as()).replace('-', ' ')
                        + (sold.buyer() == null ? ", buyer not recorded" : " to " + sold.buyer()),
                entries.stream().map(Entry::number).toList());
    }

    private void lost(Entry entry) {
        Harvesting.LotLost lost = (Harvesting.LotLost) entry.fact();
        outlet(
                entry,
                Node.Kind.LOSS,
                "lost " + entry.head().doneOn(),
                lost.cause() + ", " + to(lost.to()),
                lost.lots());
    }

    private void back(Entry entry) {
        Selling.CustomerReturned back = (Selling.CustomerReturned) entry.fact();
        outlet(
                entry,
                Node.Kind.CUSTOMER_RETURN,
                "taken back " + entry.head().doneOn(),
                (back.invoice() == null ? "invoice not recorded" : "of invoice " + back.invoice())
                        + (back.why() == null ? "" : ", " + back.why()),
                back.lots());
    }

    private void outlet(Entry entry, Node.Kind kind, String name, String words, List<LotAmount> lots) {
        String id = "outlet:" + entry.number();
        graph.add(new Node(id, kind, name, words, List.of(entry.number())));
        parts(entry, id, lots);
    }

    private static String to(@Nullable String whom) {
        return whom == null ? "where to is not recorded" : "to " + whom;
    }

    private void parts(Entry entry, String id, List<LotAmount> lots) {
        lots.forEach(part -> graph.link(part.lot().key(), id, part.quantity().toString(), List.of(entry.number())));
    }

    /** A lot of which something is left on paper leads to the store, as its crop was last counted. */
    private void store() {
        Lineage lineage = Lineage.of(book.farm(), book.day());
        Map<CropName, List<Entry>> counts = new HashMap<>();
        for (Entry entry : book.done(Harvesting.StoreCounted.class)) {
            CropName crop = ((Harvesting.StoreCounted) entry.fact()).crop();
            counts.computeIfAbsent(crop, c -> new ArrayList<>()).add(entry);
        }
        for (LotId lot : book.places(LotId.class)) {
            Optional<LotAccount.Left> left =
                    LotAccount.of(book.farm(), lot, book.day()).left();
            Optional<CropName> crop = lineage.crop(lot);
            if (left.isEmpty() || left.get().number().signum() == 0 || crop.isEmpty()) {
                continue;
            }
            String id = "store:" + crop.get();
            graph.add(counted(id, crop.get(), counts.getOrDefault(crop.get(), List.of())));
            graph.link(lot.key(), id, left.get() + " left on paper", List.of());
        }
    }

    private static Node counted(String id, CropName crop, List<Entry> counts) {
        if (counts.isEmpty()) {
            return new Node(id, Node.Kind.STORE, "store of " + crop, "never counted", List.of());
        }
        Entry last = counts.get(counts.size() - 1);
        Harvesting.StoreCounted count = (Harvesting.StoreCounted) last.fact();
        String where = count.where() == null ? "" : " in " + count.where();
        return new Node(
                id,
                Node.Kind.STORE,
                "store of " + crop,
                count.quantity() + " counted " + last.head().doneOn() + where,
                List.of(last.number()));
    }
}

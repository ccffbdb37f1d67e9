package bedledger.projections.trace;

import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.Lineage;
import bedledger.language.LotAccount;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import bedledger.language.Selling;
import bedledger.language.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Where lots went: invoices, gifts, losses, what came back, and the store as last counted. */
final class OutletLinks {
    private final Graph graph;
    private final Book book;
    /** The entries of each invoice. */
    private final Map<String, List<Long>> invoices;

    private OutletLinks(Graph graph, Book book) {
        this.graph = graph;
        this.book = book;
        this.invoices = book.done(Selling.Sold.class).stream()
                .collect(Collectors.groupingBy(
                        entry -> invoice(entry, (Selling.Sold) entry.fact()),
                        Collectors.mapping(Entry::number, Collectors.toList())));
    }

    static void into(Graph graph, Book book) {
        OutletLinks links = new OutletLinks(graph, book);
        book.done(Selling.Sold.class).forEach(links::sold);
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

    private void sold(Entry entry) {
        Selling.Sold sold = (Selling.Sold) entry.fact();
        String id = invoice(entry, sold);
        graph.add(new Node(
                id,
                Node.Kind.SALE,
                sold.invoice() == null ? "sale without an invoice" : "invoice " + sold.invoice(),
                "sold " + entry.head().doneOn() + " as " + Words.of(sold.as()).replace('-', ' ')
                        + (sold.buyer() == null ? ", buyer not recorded" : " to " + sold.buyer()),
                invoices.getOrDefault(id, List.of())));
        parts(entry, id, sold.lots());
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
        for (LotId lot : book.places(LotId.class)) {
            Optional<LotAccount.Left> left =
                    LotAccount.of(book.farm(), lot, book.day()).left();
            Optional<CropName> crop = lineage.crop(lot);
            if (left.isEmpty() || left.get().number().signum() == 0 || crop.isEmpty()) {
                continue;
            }
            String id = "store:" + crop.get();
            graph.add(counted(id, crop.get()));
            graph.link(lot.key(), id, left.get() + " left on paper", List.of());
        }
    }

    private Node counted(String id, CropName crop) {
        List<Entry> counts = book.done(Harvesting.StoreCounted.class).stream()
                .filter(entry -> counts(entry.fact(), crop))
                .toList();
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

    private static boolean counts(Fact fact, CropName crop) {
        return fact instanceof Harvesting.StoreCounted counted && counted.crop().equals(crop);
    }
}

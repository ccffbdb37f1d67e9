package bedledger.projections.trace;

import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Harvesting;
import bedledger.language.Lineage;
import bedledger.language.LotAccount;
import bedledger.language.LotId;
import java.util.List;
import java.util.Map;

/** Lots: what they were picked from, joined of or split off, and how they were washed. */
final class LotLinks {
    static void into(Graph graph, Book book) {
        Lineage lineage = Lineage.of(book.farm(), book.day());
        List<LotId> lots = book.places(LotId.class);
        lots.forEach(lot -> graph.add(node(book, lineage, lot)));
        Map<Long, List<Entry>> behind = RaisingLinks.behindHarvests(book);
        for (Entry entry : book.done(Harvesting.Harvested.class)) {
            Harvesting.Harvested harvested = (Harvesting.Harvested) entry.fact();
            behind.getOrDefault(entry.number(), List.of())
                    .forEach(planting -> graph.link(
                            Book.planting(planting.number()), harvested.lot().key(), "", List.of(entry.number())));
        }
        lots.forEach(lot -> lineage.parents(lot)
                .forEach(link -> graph.link(
                        link.from().key(),
                        lot.key(),
                        link.amount().toString(),
                        List.of(link.entry().number()))));
        book.done(Harvesting.LotsWashed.class).forEach(entry -> washed(graph, entry));
    }

    private static Node node(Book book, Lineage lineage, LotId lot) {
        LotAccount account = LotAccount.of(book.farm(), lot, book.day());
        String crop = lineage.crop(lot).map(CropName::name).orElse("several crops");
        String began = account.opening()
                .map(entry -> crop + ", " + amount(account) + ", " + how(entry))
                .orElse("nothing in the book began it");
        return new Node(
                lot.key(),
                Node.Kind.LOT,
                "lot " + lot,
                began,
                account.opening().map(entry -> List.of(entry.number())).orElse(List.of()));
    }

    private static String amount(LotAccount account) {
        return account.unit()
                .map(unit -> account.sum(account.began(), unit).toString())
                .orElse("amount not recorded");
    }

    private static String how(Entry entry) {
        String day = " " + entry.head().doneOn();
        if (entry.fact() instanceof Harvesting.Harvested harvested) {
            return "harvested" + day + " from " + Book.names(harvested.beds());
        }
        if (entry.fact() instanceof Harvesting.LotsJoined) {
            return "joined" + day;
        }
        return (entry.fact() instanceof Harvesting.LotSplit ? "split off" : "found in store") + day;
    }

    private static void washed(Graph graph, Entry entry) {
        Harvesting.LotsWashed washed = (Harvesting.LotsWashed) entry.fact();
        String id = "washing:" + entry.number();
        String water = washed.water() == null ? "water source not recorded" : "water from " + washed.water();
        String with = washed.sanitizer() == null ? "" : ", " + washed.sanitizer();
        graph.add(new Node(
                id, Node.Kind.WASHING, "washed " + entry.head().doneOn(), water + with, List.of(entry.number())));
        washed.lots().forEach(lot -> graph.link(id, lot.key(), "", List.of(entry.number())));
    }

    private LotLinks() {}
}

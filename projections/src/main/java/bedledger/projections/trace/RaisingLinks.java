package bedledger.projections.trace;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.Origin;
import bedledger.language.Planting;
import bedledger.language.SeedLotId;
import bedledger.language.Stock;
import bedledger.language.TrayId;
import bedledger.projections.history.Cropping;
import bedledger.projections.stock.StockMove;
import bedledger.projections.stock.StockMoves;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** From seed lots and trays to plantings in beds, and from plantings to what was picked. */
final class RaisingLinks {
    private final Graph graph;
    private final Book book;

    private RaisingLinks(Graph graph, Book book) {
        this.graph = graph;
        this.book = book;
    }

    static void into(Graph graph, Book book) {
        RaisingLinks links = new RaisingLinks(graph, book);
        book.places(SeedLotId.class).forEach(links::seed);
        book.places(TrayId.class).forEach(links::trays);
        book.done(Planting.class).forEach(links::planting);
        book.done(Land.Found.class).stream()
                .filter(entry -> ((Land.Found) entry.fact()).crop() != null)
                .forEach(links::planting);
        book.places(SeedLotId.class).forEach(links::uses);
    }

    private void seed(SeedLotId lot) {
        List<Entry> receipts = book.entries(lot).stream()
                .filter(entry -> entry.fact() instanceof Stock.SeedReceived)
                .toList();
        String words = receipts.isEmpty()
                ? "its receipt is not in the book"
                : received((Stock.SeedReceived) receipts.get(0).fact());
        graph.add(new Node(lot.key(), Node.Kind.SEED_LOT, "seed lot " + lot, words, Book.numbers(receipts)));
    }

    private static String received(Stock.SeedReceived seed) {
        List<String> said =
                new ArrayList<>(List.of(seed.crop().name(), seed.quantity().toString()));
        said.add(seed.supplier() == null ? "supplier not recorded" : "from " + seed.supplier());
        said.add(seed.organic() == null ? "organic or not: not recorded" : seed.organic() ? "organic" : "not organic");
        said.add(seed.receipt() == null ? "no receipt named" : "receipt " + seed.receipt());
        if (seed.certificate() != null) {
            said.add("certificate " + seed.certificate());
        }
        if (seed.suppliersAsked() != null) {
            said.add(seed.suppliersAsked() + (seed.suppliersAsked() == 1 ? " supplier" : " suppliers") + " asked");
        }
        return String.join(", ", said);
    }

    private void trays(TrayId trays) {
        List<Entry> sown = book.entries(trays).stream()
                .filter(entry -> entry.fact() instanceof Planting.TraysSown)
                .toList();
        if (!sown.isEmpty()) {
            Planting.TraysSown fact = (Planting.TraysSown) sown.get(0).fact();
            String many = fact.trays() == null
                    ? ""
                    : ", " + fact.trays() + (fact.cells() == null ? "" : " × " + fact.cells());
            String mix = fact.pottingMix() == null ? ", potting mix not recorded" : ", in " + fact.pottingMix();
            graph.add(new Node(
                    trays.key(),
                    Node.Kind.TRAYS,
                    "trays " + trays,
                    fact.crop() + " sown " + sown.get(0).head().doneOn() + many + mix,
                    Book.numbers(sown)));
        }
    }

    private void planting(Entry entry) {
        String words = words(entry.fact());
        if (words == null) {
            return;
        }
        String id = Book.planting(entry.number());
        String name = words + " " + entry.head().doneOn();
        graph.add(new Node(id, Node.Kind.PLANTING, name, how(entry.fact()), List.of(entry.number())));
        entry.fact().places().stream()
                .filter(place -> place instanceof BedId)
                .forEach(bed -> graph.link(bed.key(), id, "", List.of(entry.number())));
        if (entry.fact() instanceof Planting.Transplanted set) {
            set.trays()
                    .forEach(trays -> graph.link(
                            trays.key(),
                            id,
                            set.plants() != null && set.trays().size() == 1 ? set.plants() + " plants" : "",
                            List.of(entry.number())));
        }
    }

    private static @Nullable String words(Fact fact) {
        if (fact instanceof Planting.Sown sown) {
            return sown.crop() + " sown";
        }
        if (fact instanceof Planting.CoverSown sown) {
            return sown.crop() + " sown as a cover crop";
        }
        if (fact instanceof Planting.Transplanted set) {
            return set.crop() + " planted";
        }
        return fact instanceof Land.Found found ? found.crop() + " found standing" : null;
    }

    private static String how(Fact fact) {
        String beds = "in "
                + Book.names(
                        fact.places().stream().filter(BedId.class::isInstance).toList());
        if (fact instanceof Planting.Transplanted set) {
            String origin = set.origin() == Origin.BOUGHT
                    ? ", bought plants" + bought(set)
                    : set.origin() == Origin.OWN ? ", own plants" : "";
            return beds + origin + (set.origin() == Origin.OWN && set.trays().isEmpty() ? ", trays not recorded" : "");
        }
        return beds;
    }

    private static String bought(Planting.Transplanted set) {
        String organic = set.organic() == null ? "" : set.organic() ? ", organic" : ", not organic";
        return organic + (set.supplier() == null ? ", supplier not recorded" : ", from " + set.supplier());
    }

    private void uses(SeedLotId lot) {
        for (StockMove move : StockMoves.of(book.farm(), lot, book.day())) {
            if (move.way().sign() < 0) {
                Entry entry = move.entry();
                String target = entry.fact() instanceof Planting.TraysSown trays
                        ? trays.batch().key()
                        : Book.planting(entry.number());
                graph.link(
                        lot.key(), target, move.amount().map(Object::toString).orElse(""), List.of(entry.number()));
            }
        }
    }

    /** The plantings behind every harvest, by the harvest's entry number. */
    static Map<Long, List<Entry>> behindHarvests(Book book) {
        Map<Long, List<Entry>> behind = new LinkedHashMap<>();
        for (Cropping cropping : book.croppings()) {
            for (Entry harvest : cropping.harvests()) {
                if (book.happened(harvest) && harvest.fact() instanceof Harvesting.Harvested) {
                    List<Entry> plantings = behind.computeIfAbsent(harvest.number(), number -> new ArrayList<>());
                    cropping.plantings().stream()
                            .filter(planting -> !plantings.contains(planting))
                            .filter(planting -> !planting.head()
                                    .doneOn()
                                    .isAfter(harvest.head().doneOn()))
                            .forEach(plantings::add);
                }
            }
        }
        return behind;
    }
}

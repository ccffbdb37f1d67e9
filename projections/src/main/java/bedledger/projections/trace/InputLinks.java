package bedledger.projections.trace;

import bedledger.language.Amount;
import bedledger.language.BedId;
import bedledger.language.Care;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.MaterialName;
import bedledger.language.PileId;
import bedledger.language.Planting;
import bedledger.language.Stock;
import bedledger.language.WorkOrder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** From piles and materials to what was put on beds, and on to the lots picked there within three years; mixes, trays and washing. */
final class InputLinks {
    private static final int YEARS = 3;
    private final Graph graph;
    private final Book book;

    private InputLinks(Graph graph, Book book) {
        this.graph = graph;
        this.book = book;
    }

    static void into(Graph graph, Book book) {
        InputLinks links = new InputLinks(graph, book);
        book.places(PileId.class).forEach(pile -> graph.add(PileWords.node(book, pile)));
        book.places(MaterialName.class).forEach(links::material);
        Stream.of(Fertility.Spread.class, Care.Sprayed.class, Land.IncidentReported.class)
                .flatMap(kind -> book.done(kind).stream())
                .forEach(links::input);
        links.indoors();
    }

    private void material(MaterialName material) {
        List<Entry> telling = book.entries(material).stream()
                .filter(entry -> entry.fact() instanceof Stock.MaterialListed
                        || entry.fact() instanceof Stock.MaterialReceived
                        || (entry.fact() instanceof Stock.MixMade mix
                                && mix.mix().equals(material)))
                .toList();
        List<String> said = new ArrayList<>();
        for (Entry entry : telling) {
            if (entry.fact() instanceof Stock.MaterialReceived received) {
                said.add(received.quantity() + " received " + entry.head().doneOn());
            } else if (entry.fact() instanceof Stock.MaterialListed listed) {
                said.add(listed.approval() == null ? "no approval recorded" : "approved: " + listed.approval());
            } else {
                said.add("made here " + entry.head().doneOn());
            }
        }
        graph.add(new Node(
                material.key(),
                Node.Kind.MATERIAL,
                material.name(),
                said.isEmpty() ? "not listed, and no receipt in the book" : String.join("; ", said),
                Book.numbers(telling)));
    }

    private void input(Entry entry) {
        String id = Book.input(entry.number());
        graph.add(new Node(id, Node.Kind.INPUT, name(entry), "on " + Book.names(beds(entry)), List.of(entry.number())));
        beds(entry).forEach(bed -> graph.touch(id, bed.key(), List.of(entry.number())));
        if (entry.fact() instanceof Fertility.Spread spread) {
            String much = amount(spread.quantity(), spread.perBed());
            link(spread.pile(), id, much, entry);
            if (spread.material() != null) {
                graph.link(spread.material().key(), id, much, List.of(entry.number()));
            }
        }
        if (entry.fact() instanceof Care.Sprayed sprayed) {
            graph.link(sprayed.product().key(), id, amount(sprayed.quantity(), null), List.of(entry.number()));
        }
        beds(entry).stream()
                .flatMap(bed -> book.entries(bed).stream())
                .filter(harvest -> harvest.fact() instanceof Harvesting.Harvested && reaches(entry, harvest))
                .distinct()
                .sorted(WorkOrder.OF_WORK)
                .forEach(harvest -> graph.link(
                        id, ((Harvesting.Harvested) harvest.fact()).lot().key(), "", List.of(entry.number())));
    }

    private void link(@Nullable PileId pile, String id, String words, Entry entry) {
        if (pile != null) {
            graph.link(pile.key(), id, words, List.of(entry.number()));
        }
    }

    private static List<BedId> beds(Entry entry) {
        return entry.fact().places().stream()
                .filter(BedId.class::isInstance)
                .map(BedId.class::cast)
                .toList();
    }

    static boolean reaches(Entry input, Entry harvest) {
        boolean after = WorkOrder.OF_WORK.compare(input, harvest) < 0;
        boolean within = harvest.head().doneOn().isBefore(input.head().doneOn().plusYears(YEARS));
        return after && within && !Collections.disjoint(beds(input), ((Harvesting.Harvested) harvest.fact()).beds());
    }

    private static String name(Entry entry) {
        Fact fact = entry.fact();
        String day = " " + entry.head().doneOn();
        if (fact instanceof Fertility.Spread spread) {
            String what = spread.pile() != null
                    ? "compost " + spread.pile()
                    : spread.manure() != null ? "raw manure, " + spread.manure() : String.valueOf(spread.material());
            return what + " spread" + day;
        }
        return fact instanceof Care.Sprayed sprayed
                ? sprayed.product() + " sprayed" + day
                : "incident" + day + ", " + ((Land.IncidentReported) fact).what();
    }

    private static String amount(@Nullable Amount quantity, @Nullable Amount perBed) {
        return quantity != null ? quantity.toString() : perBed != null ? perBed + " a bed" : "";
    }

    private void indoors() {
        for (Entry entry : book.done(Stock.MixMade.class)) {
            Stock.MixMade made = (Stock.MixMade) entry.fact();
            made.materials()
                    .forEach(part -> graph.link(part.key(), made.mix().key(), "in the mix", List.of(entry.number())));
            if (made.pile() != null) {
                graph.link(made.pile().key(), made.mix().key(), "in the mix", List.of(entry.number()));
            }
        }
        for (Entry entry : book.done(Planting.TraysSown.class)) {
            Planting.TraysSown trays = (Planting.TraysSown) entry.fact();
            if (trays.pottingMix() != null) {
                graph.link(trays.pottingMix().key(), trays.batch().key(), "potting mix", List.of(entry.number()));
            }
        }
        for (Entry entry : book.done(Planting.TraysPottedUp.class)) {
            Planting.TraysPottedUp potted = (Planting.TraysPottedUp) entry.fact();
            if (potted.pottingMix() != null) {
                graph.link(potted.pottingMix().key(), potted.batch().key(), "potting mix", List.of(entry.number()));
            }
        }
        for (Entry entry : book.done(Harvesting.LotsWashed.class)) {
            Harvesting.LotsWashed washed = (Harvesting.LotsWashed) entry.fact();
            if (washed.sanitizer() != null) {
                graph.link(washed.sanitizer().key(), "washing:" + entry.number(), "sanitizer", List.of(entry.number()));
            }
        }
    }
}

package bedledger.cli.report;

import bedledger.language.Care;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import bedledger.language.NaturalOrder;
import bedledger.language.PileId;
import bedledger.language.Stock;
import java.util.Comparator;
import java.util.List;

/** Materials listed and received, what was put on the beds, and the compost piles. */
record InputsPart(Asked asked, EntryTables tables, FindingLines findings) {
    static final List<Class<? extends Fact>> KINDS = List.of(
            Stock.MaterialListed.class,
            Stock.MaterialReceived.class,
            Stock.MixMade.class,
            Stock.MaterialCounted.class,
            Care.Sprayed.class);

    Table listed() {
        return tables.ofKind(
                "table-materials", "Materials listed", "No material is listed.", Stock.MaterialListed.class);
    }

    Table received() {
        return tables.ofKind(
                "table-received",
                "Materials received",
                "No material was received, as far as the book says.",
                Stock.MaterialReceived.class);
    }

    Table mixed() {
        return tables.ofKind("table-mixes", "Mixes made on the farm", "No mix is on record.", Stock.MixMade.class);
    }

    Table counted() {
        return tables.ofKind(
                "table-materials-counted",
                "Materials as counted",
                "No material was counted, as far as the book says.",
                Stock.MaterialCounted.class);
    }

    Table applied() {
        return tables.mixed(
                "table-applied",
                "Spread, worked in and sprayed",
                "Nothing was spread or sprayed, as far as the book says.",
                asked.ofKinds(List.of(Fertility.Spread.class, Fertility.Incorporated.class, Care.Sprayed.class)));
    }

    List<PilePart> piles() {
        return asked.farm().places().stream()
                .filter(PileId.class::isInstance)
                .map(PileId.class::cast)
                .filter(pile -> asked.links().shown().contains(pile))
                .sorted(Comparator.comparing(PileId::name, NaturalOrder.INSTANCE))
                .map(this::pile)
                .toList();
    }

    private PilePart pile(PileId pile) {
        List<Entry> entries = asked.entries(pile);
        return new PilePart(
                Links.anchor(pile),
                pile.name(),
                PileLogTable.of(asked, tables.cells(), pile, entries),
                tables.mixed(
                        "heap-" + pile.name(),
                        "Pile " + pile + ": entries as written",
                        "No entry in force names this pile.",
                        asked.done().stream()
                                .filter(entry -> entry.fact().places().contains(pile))
                                .toList()),
                Concerning.of(findings.of(pile)));
    }

    /** One pile: its log day by day, and its entries. */
    record PilePart(String anchor, String name, Table log, Table entries, Concerning findings) {}
}

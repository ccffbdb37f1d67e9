package bedledger.cli.report;

import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Planting;
import bedledger.language.SeedLotId;
import bedledger.language.Stock;
import bedledger.language.TrayId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Seed and stock as they came in, and where each seed lot was sown or planted. */
record SeedPart(Asked asked, EntryTables tables, Forward forward) {
    static final List<Class<? extends Fact>> KINDS =
            List.of(Stock.SeedReceived.class, Stock.GerminationTested.class, Planting.TraysSown.class);

    Table received() {
        Set<SeedLotId> named = new HashSet<>();
        return tables.ofKind(
                "table-seed",
                "Seed, planting stock and bought plants received",
                "No seed is on record.",
                Stock.SeedReceived.class,
                entry -> {
                    SeedLotId lot = ((Stock.SeedReceived) entry.fact()).seedLot();
                    return named.add(lot) ? Links.anchor(lot) : "";
                });
    }

    Table tested() {
        return tables.ofKind(
                "table-seed-tested",
                "Germination tests",
                "No germination test is on record.",
                Stock.GerminationTested.class);
    }

    Table trays() {
        Set<TrayId> named = new HashSet<>();
        return tables.ofKind(
                "table-trays", "Trays sown", "No trays are on record.", Planting.TraysSown.class, entry -> {
                    TrayId trays = ((Planting.TraysSown) entry.fact()).batch();
                    return named.add(trays) ? Links.anchor(trays) : "";
                });
    }

    Table used() {
        List<Row> rows = new ArrayList<>();
        asked.done().stream()
                .map(Entry::fact)
                .filter(Stock.SeedReceived.class::isInstance)
                .map(fact -> ((Stock.SeedReceived) fact).seedLot())
                .distinct()
                .forEach(lot -> rows.add(use(lot)));
        return Table.of(
                "table-seed-used",
                "Where each seed lot went",
                "No seed is on record.",
                List.of("seed lot", "sown or planted", "lots grown from it, and where they went"),
                rows);
    }

    private Row use(SeedLotId lot) {
        List<Phrase> uses = asked.entries(lot).stream()
                .filter(entry -> entry.fact() instanceof Planting)
                .map(this::use)
                .toList();
        return Row.of(
                Cell.of(asked.links().place(lot)).asHeader(),
                uses.isEmpty() ? Cell.of("no sowing or planting names it") : Cell.of(uses),
                Cell.of(forward.of(lot)));
    }

    private Phrase use(Entry entry) {
        return Phrase.of(entry.head().doneOn() + " " + FactParts.operation(entry.fact()) + " ")
                .plus(
                        entry.fact() instanceof Planting.TraysSown trays
                                ? asked.links().place(trays.batch())
                                : tables.cells().parts().where(entry.fact()))
                .plus(" ")
                .plus(asked.links().entry(entry.number()));
    }
}

package bedledger.cli.report;

import bedledger.cli.prove.Judging;
import bedledger.cli.read.ReadBook;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Lineage;
import bedledger.language.LotId;
import bedledger.language.PileId;
import bedledger.language.Place;
import bedledger.language.SeedLotId;
import bedledger.language.Stock;
import bedledger.language.TrayId;
import bedledger.language.WorkOrder;
import bedledger.projections.findings.Findings;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.history.BedList;
import bedledger.projections.history.BookZone;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the report is about: a book as known on a day, and what the projections say of it on the day asked.
 *
 * @param done every entry whose work was done by that day, in the order of the work, what was replaced or struck included
 * @param beds the beds there are on that day
 * @param rules empty where this version of the program has no such rule book; then there are no findings
 */
record Asked(
        ReadBook book,
        LocalDate day,
        List<Entry> done,
        BedList beds,
        Optional<RuleBook> rules,
        Findings findings,
        Tables tables,
        Returned returned,
        BookZone zone,
        Lineage lineage,
        Links links,
        Fate fate) {

    static Asked of(ReadBook book, LocalDate day) {
        Farm farm = book.farm();
        List<Entry> done = farm.written().stream()
                .filter(entry -> !entry.head().doneOn().isAfter(day))
                .filter(entry -> !(entry.fact() instanceof BookKeeping.Struck))
                .sorted(WorkOrder.OF_WORK)
                .toList();
        BedList beds = BedList.of(farm, day);
        BookZone zone = new BookZone(book.zone());
        Links links = new Links(farm.written().size(), shown(done, beds));
        Optional<RuleBook> rules = RuleBook.of(book.opened().rules());
        return new Asked(
                book,
                day,
                done,
                beds,
                rules,
                rules.isPresent() ? Judging.of(book, day) : new Findings(List.of()),
                book.tables(),
                Returned.of(farm, book.tables(), day, Options.DEFAULT.speaking(book.massUnit())),
                zone,
                Lineage.of(farm, day),
                links,
                new Fate(farm, zone, links));
    }

    private static Set<Place> shown(List<Entry> done, BedList beds) {
        Set<Place> shown = new HashSet<>();
        beds.rows().forEach(row -> shown.add(row.bed()));
        for (Entry entry : done) {
            entry.fact().places().stream()
                    .filter(place -> place instanceof PileId
                            || place instanceof LotId
                            || place instanceof TrayId
                            || (place instanceof SeedLotId && entry.fact() instanceof Stock.SeedReceived))
                    .forEach(shown::add);
        }
        return shown;
    }

    Farm farm() {
        return book.farm();
    }

    /** The entries of some kinds, what was replaced or struck included. */
    List<Entry> ofKinds(List<Class<? extends Fact>> kinds) {
        return done.stream()
                .filter(entry -> kinds.contains(entry.fact().getClass()))
                .toList();
    }

    /** The entries in force that touch a place, by the day asked. */
    List<Entry> entries(Place place) {
        return farm().entries(place).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(day))
                .toList();
    }
}

package bedledger.cli.report;

import bedledger.language.BedWork;
import bedledger.language.BookKeeping;
import bedledger.language.Care;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.Observation;
import bedledger.language.Oversight;
import bedledger.language.PileId;
import bedledger.language.Planting;
import bedledger.language.Selling;
import bedledger.language.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What an inspector asks to see, where it stands in the report, and how many entries there are of it; common practice, no source. */
record HerePart(Asked asked) {
    Table table() {
        List<Row> rows = new ArrayList<>();
        rows.add(row(
                "fields and beds", "land", of(Land.FieldRegistered.class, Land.BedLaidOut.class, Land.BedSplit.class)));
        rows.add(row("what was on the land before", "land", of(Land.LandUseDeclared.class)));
        rows.add(row(
                "neighbours, buffers, incidents",
                "land",
                of(Land.NeighbourDeclared.class, Land.IncidentReported.class)));
        rows.add(row("seed and stock received", "seed", of(Stock.SeedReceived.class)));
        rows.add(row("trays sown, with their mix", "seed", of(Planting.TraysSown.class)));
        rows.add(row(
                "inputs listed, received, mixed",
                "inputs",
                of(Stock.MaterialListed.class, Stock.MaterialReceived.class, Stock.MixMade.class)));
        rows.add(row("spread and worked in", "inputs", of(Fertility.Spread.class, Fertility.Incorporated.class)));
        rows.add(row("compost piles: built, read, turned", "inputs", HerePart::isOfPile));
        rows.add(row("sprayed", "inputs", of(Care.Sprayed.class)));
        rows.add(row("soil and bed work", "beds", BedWork.class::isInstance));
        rows.add(row(
                "sown, planted, ended",
                "planting",
                fact -> fact instanceof Planting && !(fact instanceof Planting.TraysSown)));
        rows.add(row(
                "weeded, watered, covered, looked at",
                "beds",
                fact -> fact instanceof Observation || (fact instanceof Care && !(fact instanceof Care.Sprayed))));
        rows.add(row("harvested", "harvest", of(Harvesting.Harvested.class)));
        rows.add(row(
                "washed, packed, stored",
                "storage",
                of(Harvesting.LotsWashed.class, Harvesting.LotPacked.class, Harvesting.LotStored.class)));
        rows.add(row("store counted", "storage", of(Harvesting.StoreCounted.class)));
        rows.add(row(
                "tools, crates, wash line cleaned; scales checked",
                "storage",
                of(Harvesting.EquipmentCleaned.class, Harvesting.EquipmentCalibrated.class)));
        rows.add(row("sold, given away, taken back", "sales", Selling.class::isInstance));
        rows.add(row(
                "inspections and answers to conditions",
                "oversight",
                of(Oversight.InspectionHeld.class, Oversight.ConditionAnswered.class)));
        rows.add(row("samples", "oversight", of(Oversight.SampleTaken.class, Oversight.SampleReported.class)));
        rows.add(row("training", "training", of(Oversight.Trained.class)));
        rows.add(row("papers kept with the book", "others", of(BookKeeping.DocumentAttached.class)));
        rows.add(row(
                "corrected or struck",
                "corrections",
                asked.farm().written().stream().filter(entry -> entry.head().corrects() != null)));
        return Table.of(
                        "table-here",
                        "Records in force by " + asked.day() + ", and where they stand",
                        "",
                        List.of("record", "entries", "from, to"),
                        rows)
                .numbersIn(1, 2);
    }

    private static Predicate<Fact> of(Class<?>... kinds) {
        List<Class<?>> wanted = List.of(kinds);
        return fact -> wanted.contains(fact.getClass());
    }

    private static boolean isOfPile(Fact fact) {
        return !(fact instanceof Fertility.Spread) && fact.places().stream().anyMatch(PileId.class::isInstance);
    }

    private Row row(String record, String section, Predicate<Fact> kind) {
        return row(
                record,
                section,
                asked.done().stream().filter(asked.fate()::isInForce).filter(entry -> kind.test(entry.fact())));
    }

    private static Row row(String record, String section, Stream<Entry> found) {
        List<Entry> entries = found.toList();
        return Row.of(
                Cell.of(Phrase.link(record, section)).asHeader(),
                Cell.number(entries.isEmpty() ? "none" : Integer.toString(entries.size())),
                Cell.of(days(entries)));
    }

    private static Phrase days(List<Entry> entries) {
        if (entries.isEmpty()) {
            return Phrase.NONE;
        }
        String first = entries.get(0).head().doneOn().toString();
        String last = entries.get(entries.size() - 1).head().doneOn().toString();
        return first.equals(last)
                ? Phrase.whole(first)
                : Phrase.whole(first).plus(" to ").plus(Phrase.whole(last));
    }
}

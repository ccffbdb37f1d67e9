package bedledger.cli.report;

import bedledger.language.Entry;
import bedledger.projections.history.Cropping;
import bedledger.projections.history.Croppings;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** Every crop and cover crop, bed by bed, from planting to its end. */
record PlantingPart(Asked asked, AuditCells cells) {
    private static final List<String> COLUMNS = List.of(
            "bed", "crop", "from", "planted with", "seed or plants", "until", "ended by", "harvests", "entries");

    Table croppings() {
        List<Cropping> all = Croppings.of(asked.farm(), asked.day());
        Iterable<Row> rows = () -> rows(all);
        return Table.over(
                "table-croppings",
                "Crops and cover crops up to " + asked.day() + ", bed by bed in the order they began",
                "Nothing was planted, as far as the book says.",
                COLUMNS,
                !all.isEmpty(),
                rows);
    }

    private Iterator<Row> rows(List<Cropping> all) {
        return all.stream().map(this::row).iterator();
    }

    private Row row(Cropping cropping) {
        return Row.of(
                Cell.of(asked.links().place(cropping.bed())).asHeader(),
                Cell.of(cropping.crop() + (cropping.cover() ? " (cover crop)" : "")),
                Cell.whole(cropping.since().toString()),
                Cell.of(cropping.plantings().stream()
                        .map(entry -> said(entry, cells.parts().what(entry.fact())))
                        .toList()),
                Cell.of(cropping.plantings().stream()
                        .map(entry -> cells.parts().input(entry.fact()))
                        .toList()),
                Cell.whole(cropping.ended().map(Object::toString).orElse("standing")),
                Cell.of(cropping.end()
                        .map(end -> FactParts.operation(end.fact()))
                        .orElse("")),
                Cell.number(Integer.toString(cropping.harvests().size())),
                Cell.of(asked.links().entries(numbers(cropping))));
    }

    private static Phrase said(Entry entry, Phrase what) {
        Phrase operation = Phrase.of(FactParts.operation(entry.fact()));
        return what.isEmpty() ? operation : operation.plus(": ").plus(what);
    }

    private static List<Long> numbers(Cropping cropping) {
        List<Long> numbers = new ArrayList<>();
        cropping.plantings().forEach(entry -> numbers.add(entry.number()));
        cropping.harvests().forEach(entry -> numbers.add(entry.number()));
        cropping.end().ifPresent(entry -> numbers.add(entry.number()));
        return numbers.stream().distinct().sorted().toList();
    }
}

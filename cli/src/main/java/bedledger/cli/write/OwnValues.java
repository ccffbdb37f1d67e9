package bedledger.cli.write;

import bedledger.language.BookKeeping;
import bedledger.language.Problem;
import bedledger.language.Words;
import bedledger.projections.tables.OwnValue;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Tables;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Says what is wrong with a value measured on the farm: one that no table has a place for would be written and never count. */
final class OwnValues {
    private final Tables tables;
    private final Known known;

    OwnValues(Tables tables, Known known) {
        this.tables = tables;
        this.known = known;
    }

    List<Problem> faults(BookKeeping.OwnValueNoted noted) {
        List<Problem> faults = new ArrayList<>();
        boolean tabled = tables.crop(noted.of()).isPresent()
                || tables.material(noted.of()).isPresent();
        if (!tabled && known.crop(noted.of()).isEmpty()) {
            faults.add(new Problem("of", noted.of(), "the tables have no such crop or material", nearest(noted.of())));
        }
        Optional<Quantity> quantity = quantity(noted.coefficient());
        if (quantity.isEmpty()) {
            faults.add(new Problem(
                    "coefficient",
                    noted.coefficient(),
                    "the tables have no such coefficient",
                    near(noted.coefficient())));
        } else {
            absurd(noted, quantity.get()).ifPresent(faults::add);
        }
        return faults;
    }

    private Optional<Problem> absurd(BookKeeping.OwnValueNoted noted, Quantity quantity) {
        try {
            tables.knowing(Map.of(noted.of(), ""))
                    .with(List.of(
                            new OwnValue(noted.of(), quantity, noted.value().value(), null, noted.how())));
            return Optional.empty();
        } catch (IllegalArgumentException tooMuch) {
            return Optional.of(new Problem(
                    "value",
                    noted.value().toString(),
                    "no " + quantity.words() + " is that large or that small",
                    "it is given in " + quantity.unit() + "; check the number"));
        }
    }

    private static Optional<Quantity> quantity(String typed) {
        return Arrays.stream(Quantity.values())
                .filter(quantity -> quantity.words().equals(typed.replace('-', ' ')))
                .findFirst();
    }

    private static String near(String typed) {
        List<String> words = Arrays.stream(Quantity.values())
                .map(quantity -> quantity.words().replace(' ', '-'))
                .toList();
        return Words.nearest(typed, words)
                .map(word -> "did you mean " + word + "?")
                .orElse("they are listed by: bedledger rules --tables");
    }

    private String nearest(String typed) {
        List<String> near = Stream.concat(known.nearestCrops(typed).stream(), tables.nearestMaterials(typed).stream())
                .distinct()
                .toList();
        return near.isEmpty()
                ? "they are listed by: bedledger rules --tables"
                : "did you mean " + String.join(" or ", near) + "?";
    }
}

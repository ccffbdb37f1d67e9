package bedledger.projections.trace;

import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.NaturalOrder;
import bedledger.language.Place;
import bedledger.projections.history.Cropping;
import bedledger.projections.history.Croppings;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The record that is traced, up to a day. */
record Book(Farm farm, LocalDate day, List<Cropping> croppings) {
    Book(Farm farm, LocalDate day) {
        this(
                farm,
                day,
                Croppings.of(farm, day).stream()
                        .filter(cropping -> !cropping.since().isAfter(day))
                        .toList());
    }

    boolean happened(Entry entry) {
        return !entry.head().doneOn().isAfter(day);
    }

    <F extends Fact> List<Entry> done(Class<F> kind) {
        return farm.ofKind(kind).stream().filter(this::happened).toList();
    }

    List<Entry> entries(Place place) {
        return farm.entries(place).stream().filter(this::happened).toList();
    }

    <P extends Place> List<P> places(Class<P> kind) {
        return farm.places().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .filter(place -> !entries(place).isEmpty())
                .sorted(Comparator.comparing(Place::toString, NaturalOrder.INSTANCE))
                .toList();
    }

    static List<Long> numbers(Collection<Entry> entries) {
        return entries.stream().map(Entry::number).distinct().sorted().toList();
    }

    static String names(Collection<?> things) {
        return things.stream().map(Object::toString).collect(Collectors.joining(" "));
    }

    static String planting(long entry) {
        return "planting:" + entry;
    }

    static String input(long entry) {
        return "input:" + entry;
    }
}

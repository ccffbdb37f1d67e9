package bedledger.projections.gaps;

import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.NaturalOrder;
import bedledger.language.Place;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The record that is looked through, and the days that are asked about. */
record Looked(Farm farm, LocalDate from, LocalDate day) {
    /** The facts in force of one kind, done by the last day. */
    <F extends Fact> List<Entry> done(Class<F> kind) {
        return farm.ofKind(kind).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(day))
                .toList();
    }

    /** The same, done on the days asked about. */
    <F extends Fact> List<Entry> within(Class<F> kind) {
        return done(kind).stream().filter(this::isWithin).toList();
    }

    boolean isWithin(Entry entry) {
        return !entry.head().doneOn().isBefore(from) && !entry.head().doneOn().isAfter(day);
    }

    /** The places of one kind that an entry by the last day names, in natural order. */
    <P extends Place> List<P> places(Class<P> kind) {
        return farm.places().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .filter(place -> !entries(place).isEmpty())
                .sorted(Comparator.comparing(Place::toString, NaturalOrder.INSTANCE))
                .toList();
    }

    List<Entry> entries(Place place) {
        return farm.entries(place).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(day))
                .toList();
    }

    static List<Long> numbers(Collection<Entry> entries) {
        return entries.stream().map(Entry::number).distinct().sorted().toList();
    }

    static String list(Collection<?> things) {
        return things.stream().map(Object::toString).distinct().collect(Collectors.joining(", "));
    }

    /** A name as it is typed: in quotes where it has a space. */
    static String typed(Object name) {
        return name.toString().contains(" ") ? '"' + name.toString() + '"' : name.toString();
    }

    /** The command that adds something to an entry. */
    static String correct(Entry entry, String what) {
        return "correct " + entry.number() + " --why \"left out\" " + what;
    }
}

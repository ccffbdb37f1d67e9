package bedledger.projections.history;

import bedledger.language.Area;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Head;
import bedledger.language.SeasonBook;
import java.util.List;
import java.util.function.UnaryOperator;

/** Gives entries of a season's book what its fixture cannot say: people, minutes and the area really worked. */
public final class Heads {
    private Heads() {}

    public static UnaryOperator<Head> worked(int people, int minutes) {
        return h -> new Head(
                h.doneOn(),
                h.time(),
                h.placeInDay(),
                h.notedOn(),
                h.doneBy(),
                h.area(),
                people,
                minutes,
                h.equipment(),
                h.note(),
                h.documents(),
                h.corrects());
    }

    public static UnaryOperator<Head> area(String area) {
        return h -> new Head(
                h.doneOn(),
                h.time(),
                h.placeInDay(),
                h.notedOn(),
                h.doneBy(),
                Area.parse(area),
                h.people(),
                h.minutes(),
                h.equipment(),
                h.note(),
                h.documents(),
                h.corrects());
    }

    /** The farm of the book with one entry's head changed. */
    public static Farm with(SeasonBook book, Entry changed, UnaryOperator<Head> change) {
        List<Entry> entries = book.entries().stream()
                .map(entry -> entry.number() == changed.number() ? with(entry, change) : entry)
                .toList();
        return Farm.of(entries);
    }

    private static Entry with(Entry entry, UnaryOperator<Head> change) {
        return new Entry(
                entry.number(),
                entry.act(),
                entry.sequence(),
                entry.writtenAt(),
                entry.writtenBy(),
                change.apply(entry.head()),
                entry.fact());
    }
}

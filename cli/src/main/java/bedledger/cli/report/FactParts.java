package bedledger.cli.report;

import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Ask;
import bedledger.language.BedId;
import bedledger.language.Condition;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Feedstock;
import bedledger.language.FieldId;
import bedledger.language.Located;
import bedledger.language.LotAmount;
import bedledger.language.MaterialName;
import bedledger.language.Place;
import bedledger.language.Words;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A fact taken apart for the columns of a table, by what its kind asks for: operation, where, what and how much, input or lot, papers. */
record FactParts(Links links) {
    /** What names a paper, whichever kind asks for it. */
    private static final Set<String> PAPERS = Set.of(
            "receipt", "invoice", "certificate", "evidence", "approval", "report", "licence", "variance", "fileName");

    static String operation(Fact fact) {
        ActKind kind = Acts.of(fact.getClass());
        String name = kind.word().isEmpty() ? kind.name().replace('.', ' ') : kind.word();
        return name.replace('-', ' ');
    }

    /** All of a fact in one phrase, its places linked. */
    Phrase whole(Fact fact) {
        Phrase where = where(fact);
        Phrase operation = Phrase.of(operation(fact));
        Phrase rest = Phrase.joined(
                Stream.of(input(fact), what(fact), papers(fact))
                        .filter(part -> !part.isEmpty())
                        .toList(),
                "; ");
        Phrase begun = where.isEmpty() ? operation : operation.plus(" ").plus(where);
        return rest.isEmpty() ? begun : begun.plus(": ").plus(rest);
    }

    /** Beds and fields. */
    Phrase where(Fact fact) {
        return links.places(fact.places().stream()
                .filter(place -> place instanceof BedId || place instanceof FieldId)
                .toList());
    }

    /** What was done or seen and how much, without places, inputs and papers. */
    Phrase what(Fact fact) {
        return said(fact, ask -> !isPlace(ask) && !isInput(ask) && !PAPERS.contains(ask.name()));
    }

    /** Seed lots, harvest lots with their amounts, piles, materials, manure. */
    Phrase input(Fact fact) {
        return said(fact, FactParts::isInput);
    }

    Phrase papers(Fact fact) {
        return said(fact, ask -> PAPERS.contains(ask.name()));
    }

    /** One field's value, its places linked; empty where it was not recorded. */
    Phrase value(Ask ask, Fact fact) {
        Object value = ask.in(fact);
        if (value == null) {
            return Phrase.NONE;
        }
        Stream<?> several = value instanceof List<?> list ? list.stream() : Stream.of(value);
        if (ask.name().equals("inspection") && value instanceof Long number) {
            return links.entry(number);
        }
        boolean wordy = ask.type() == Condition.class || ask.type() == MaterialName.class;
        boolean spaced = ask.type() == String.class || ask.type() == Feedstock.class;
        String between = wordy ? "; " : spaced ? ", " : " ";
        return Phrase.joined(several.map(this::one).toList(), between);
    }

    private Phrase one(Object value) {
        if (value instanceof Boolean yes) {
            return Phrase.of(yes ? "yes" : "no");
        }
        if (value instanceof LotAmount part) {
            return links.place(part.lot()).plus(" " + part.quantity());
        }
        if (value instanceof Place place) {
            return links.place(place);
        }
        return Phrase.of(value instanceof Enum<?> choice ? words(choice) : value.toString());
    }

    private static String words(Enum<?> choice) {
        return Words.of(choice).replace('-', ' ');
    }

    private Phrase said(Fact fact, java.util.function.Predicate<Ask> wanted) {
        List<Phrase> parts = Acts.of(fact.getClass()).asks().stream()
                .filter(wanted)
                .map(ask -> named(ask, fact))
                .filter(part -> !part.isEmpty())
                .toList();
        return Phrase.joined(parts, "; ");
    }

    /** "half bed" for a yes, "half bed no" for a no; what speaks for itself goes without its name. */
    Phrase named(Ask ask, Fact fact) {
        if (Boolean.TRUE.equals(ask.in(fact))) {
            return Phrase.of(title(ask));
        }
        Phrase value = value(ask, fact);
        boolean plain = ask.bare() || ask.name().equals("crop") || ask.name().equals("quantity");
        return value.isEmpty() || plain ? value : Phrase.of(title(ask) + " ").plus(value);
    }

    /** A field's name for a column or a phrase: {@code half-bed} becomes "half bed". */
    static String title(Ask ask) {
        return ask.option().replace('-', ' ');
    }

    private static boolean isPlace(Ask ask) {
        return ask.type() == BedId.class || ask.type() == FieldId.class;
    }

    private static boolean isInput(Ask ask) {
        boolean located = Place.class.isAssignableFrom(ask.type()) || Located.class.isAssignableFrom(ask.type());
        return (located && !isPlace(ask)) || ask.name().equals("manure");
    }

    /** What the head of an entry says beside the fact: time, area, people, equipment, note. */
    static List<Phrase> head(Entry entry) {
        return Stream.of(
                        said("at ", entry.head().time()),
                        said("area worked ", entry.head().area()),
                        entry.head().people() == null && entry.head().minutes() == null ? "" : labour(entry),
                        said("with ", entry.head().equipment()),
                        said("noted on ", entry.head().notedOn()),
                        said("Note: ", entry.head().note()))
                .filter(text -> !text.isEmpty())
                .map(Phrase::of)
                .toList();
    }

    private static String labour(Entry entry) {
        String people = entry.head().people() == null
                ? "people not recorded"
                : entry.head().people() + (entry.head().people() == 1 ? " person" : " people");
        return people
                + (entry.head().minutes() == null
                        ? ", minutes not recorded"
                        : " × " + entry.head().minutes() + " min");
    }

    private static String said(String before, @org.jspecify.annotations.Nullable Object value) {
        return value == null ? "" : before + value;
    }
}

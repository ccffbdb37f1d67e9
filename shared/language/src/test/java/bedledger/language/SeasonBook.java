package bedledger.language;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Writes entries for tests as a grower would say them: {@code book.on("2025-07-08").did("flail", "beds=N1 N2", "passes=2")}. */
public final class SeasonBook {
    private final List<Entry> entries = new ArrayList<>();
    private final Map<LocalDate, Integer> places = new HashMap<>();
    private LocalDate day = LocalDate.parse("2025-01-01");
    private @Nullable Instant writtenAt;
    private UnaryOperator<Head> heading = UnaryOperator.identity();

    /** The day of the work of what follows, written on its evening. */
    public SeasonBook on(String isoDay) {
        day = LocalDate.parse(isoDay);
        writtenAt = null;
        return this;
    }

    /** The moment of writing of what follows until the next {@link #on}. */
    public SeasonBook writtenAt(String instant) {
        writtenAt = Instant.parse(instant);
        return this;
    }

    /** Writes an act; each argument is {@code option=value}, a list's values apart by spaces (texts by semicolons). */
    public Entry did(String word, String... options) {
        return add(head(), null, fact(word, options));
    }

    public Entry correct(Entry wrong, String reason, String word, String... options) {
        return add(wrong.head().correcting(new Correction(wrong.number(), reason)), wrong, fact(word, options));
    }

    public Entry strike(Entry wrong, String reason) {
        return add(wrong.head().correcting(new Correction(wrong.number(), reason)), wrong, new BookKeeping.Struck());
    }

    public Entry add(Fact fact) {
        return add(head(), null, fact);
    }

    /** What is changed in the heads of what follows. */
    public SeasonBook heading(UnaryOperator<Head> changed) {
        heading = changed;
        return this;
    }

    private Head head() {
        return heading.apply(Head.on(day, places.merge(day, 1, Integer::sum)).by(new PersonId("owner")));
    }

    private Entry add(Head head, @Nullable Entry answered, Fact fact) {
        long number = entries.size() + 1L;
        ActId act = answered == null ? id(number) : answered.act();
        Instant at = writtenAt == null ? day.atTime(23, 0).toInstant(java.time.ZoneOffset.UTC) : writtenAt;
        long sequence = answered == null ? 0 : answered.sequence() + 1;
        Entry entry = new Entry(number, act, sequence, at, new PersonId("owner"), head, fact);
        entries.add(entry);
        return entry;
    }

    private static ActId id(long number) {
        return new ActId("01900000-0000-7000-8000-%012x".formatted(number));
    }

    private static Fact fact(String word, String... options) {
        ActKind kind = Acts.byWord(word).orElseThrow(() -> new IllegalArgumentException("no act '" + word + "'"));
        Map<String, List<String>> texts = new HashMap<>();
        for (String option : options) {
            String name = option.substring(0, option.indexOf('='));
            Ask ask = kind.asks().stream()
                    .filter(a -> a.option().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(word + " does not ask for " + name));
            String value = option.substring(option.indexOf('=') + 1);
            boolean wordy = java.util.Set.<Class<?>>of(
                            String.class, Condition.class, MaterialName.class, Feedstock.class)
                    .contains(ask.type());
            String apart = wordy ? "\\s*;\\s*" : "\\s+";
            texts.put(name, ask.list() ? Arrays.asList(value.split(apart)) : List.of(value));
        }
        FactReader reader = new FactReader(kind);
        return reader.read(texts)
                .orElseThrow(
                        () -> new IllegalArgumentException(reader.problems().toString()));
    }

    public List<Entry> entries() {
        return List.copyOf(entries);
    }

    public Farm farm() {
        return Farm.of(entries);
    }
}

package bedledger.language;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** Reads a fact from the texts given for its fields, finding every problem at once. */
public final class FactReader {
    private static final Map<Class<?>, MethodHandle> PARSERS = new ConcurrentHashMap<>();
    private final ActKind kind;
    private final List<Problem> problems = new ArrayList<>();

    public FactReader(ActKind kind) {
        this.kind = kind;
    }

    /** The problems found by the last {@link #read}. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /**
     * Reads the fact.
     *
     * @param texts by option ({@code half-bed}), the texts given: one for a single value, one or more for a list
     * @return the fact, or empty if there were problems
     */
    public Optional<Fact> read(Map<String, List<String>> texts) {
        problems.clear();
        Map<String, Object> values = new LinkedHashMap<>();
        for (Ask ask : kind.asks()) {
            Object value = value(ask, texts.getOrDefault(ask.option(), List.of()));
            if (value != null) {
                values.put(ask.name(), value);
            }
        }
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        try {
            Fact fact = kind.make(values);
            problems.addAll(fact.faults());
            return problems.isEmpty() ? Optional.of(fact) : Optional.empty();
        } catch (BadValue bad) {
            problems.add(bad.as(kind.word()));
            return Optional.empty();
        }
    }

    private @Nullable Object value(Ask ask, List<String> given) {
        if (given.isEmpty()) {
            if (ask.required()) {
                problems.add(new Problem(ask.option(), "", "it is missing: " + ask.help(), howToGive(ask)));
            }
            return null;
        }
        if (ask.list()) {
            return given.stream()
                    .map(text -> one(ask, text))
                    .filter(java.util.Objects::nonNull)
                    .toList();
        }
        if (given.size() > 1) {
            problems.add(new Problem(
                    ask.option(), String.join(" ", given), "one value is taken here", "write one entry for each"));
            return null;
        }
        return one(ask, given.get(0));
    }

    private String howToGive(Ask ask) {
        return ask.bare()
                ? "write it right after the word: " + kind.example()
                : "add --" + ask.option() + ", as in: " + kind.example();
    }

    private @Nullable Object one(Ask ask, String text) {
        try {
            Object value = parse(ask.type(), text);
            if (value instanceof Integer whole && (whole < ask.least() || whole > ask.most())) {
                throw new BadValue(
                        text,
                        "it lies outside " + ask.least() + " to " + ask.most(),
                        "check the number: " + ask.help());
            }
            return value;
        } catch (BadValue bad) {
            problems.add(bad.as(ask.option()));
            return null;
        }
    }

    /** Reads one value of a type that an act may ask for; {@link BadValue} says what is wrong. */
    public static Object parse(Class<?> type, String text) {
        if (type == String.class) {
            return Text.checked(text);
        }
        if (type == Boolean.class || type == boolean.class) {
            return yesOrNo(text);
        }
        if (type == Integer.class || type == int.class || type == long.class) {
            return whole(type, text);
        }
        if (type == LocalDate.class) {
            return date(text);
        }
        if (type.isEnum()) {
            return choice(type, text);
        }
        return byItsOwnParse(type, text);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Object choice(Class<?> type, String text) {
        return Words.choice((Class) type, text);
    }

    private static Object yesOrNo(String text) {
        return switch (text.strip().toLowerCase(java.util.Locale.ROOT)) {
            case "yes", "true", "y" -> true;
            case "no", "false", "n" -> false;
            default -> throw new BadValue(text, "it is neither yes nor no", "write yes or no, or leave it out");
        };
    }

    private static Object whole(Class<?> type, String text) {
        try {
            return type == long.class ? (Object) Long.valueOf(text.strip()) : (Object) Integer.valueOf(text.strip());
        } catch (NumberFormatException notWhole) {
            throw new BadValue(text, "it is not a whole number", "write digits only");
        }
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException notADate) {
            throw new BadValue(text, "it is not a day", "write it like 2025-07-08");
        }
    }

    private static Object byItsOwnParse(Class<?> type, String text) {
        try {
            return PARSERS.computeIfAbsent(type, FactReader::parser).invoke(text);
        } catch (BadValue bad) {
            throw bad;
        } catch (Throwable impossible) {
            throw new IllegalStateException(type + " from '" + text + "'", impossible);
        }
    }

    private static MethodHandle parser(Class<?> type) {
        try {
            return MethodHandles.publicLookup().findStatic(type, "parse", MethodType.methodType(type, String.class));
        } catch (ReflectiveOperationException missing) {
            throw new IllegalStateException(type + " has no public static parse(String)", missing);
        }
    }
}

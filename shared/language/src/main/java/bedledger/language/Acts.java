package bedledger.language;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All kinds of act there are, read from the records permitted by {@link Fact}: a new record there is a new kind here. */
public final class Acts {
    private static final Map<Class<?>, ActKind> KINDS = new ConcurrentHashMap<>();

    /** The kinds, topic by topic, in the order of their records. */
    public static List<ActKind> all() {
        return All.KINDS;
    }

    public static ActKind of(Class<? extends Fact> type) {
        return KINDS.computeIfAbsent(type, ignored -> ActKind.of(type));
    }

    public static Optional<ActKind> byWord(String word) {
        return all().stream()
                .filter(kind -> !word.isEmpty() && kind.word().equals(word))
                .findFirst();
    }

    public static Optional<ActKind> byName(String name) {
        return Optional.ofNullable(All.BY_NAME.get(name));
    }

    /** The words of {@code did}. */
    public static List<String> words() {
        return all().stream().map(ActKind::word).filter(word -> !word.isEmpty()).toList();
    }

    /** The topics, in the order an inspector reads. */
    public static List<Class<?>> topics() {
        return List.of(Fact.class.getPermittedSubclasses());
    }

    private static final class All {
        static final List<ActKind> KINDS = topics().stream()
                .flatMap(All::records)
                .map(type -> of(type.asSubclass(Fact.class)))
                .toList();
        static final Map<String, ActKind> BY_NAME =
                KINDS.stream().collect(Collectors.toUnmodifiableMap(ActKind::name, Function.identity()));

        private static Stream<Class<?>> records(Class<?> topic) {
            return Arrays.stream(topic.getPermittedSubclasses());
        }
    }

    private Acts() {}
}

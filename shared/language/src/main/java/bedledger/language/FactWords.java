package bedledger.language;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Says a fact in one line, from the description of its kind: "flail N1 N2, passes 2, half-bed". */
public final class FactWords {
    public static String of(Fact fact) {
        ActKind kind = Acts.of(fact.getClass());
        String word = kind.word().isEmpty() ? plain(kind.name()) : kind.word();
        String bare = kind.asks().stream()
                .filter(Ask::bare)
                .map(ask -> ask.in(fact))
                .filter(Objects::nonNull)
                .map(FactWords::value)
                .collect(Collectors.joining(" "));
        String rest = kind.asks().stream()
                .filter(ask -> !ask.bare())
                .map(ask -> option(ask, ask.in(fact)))
                .filter(said -> !said.isEmpty())
                .collect(Collectors.joining(", "));
        return word
                + (bare.isEmpty() ? "" : " " + bare)
                + (rest.isEmpty() ? "" : bare.isEmpty() ? ": " + rest : ", " + rest);
    }

    private static String plain(String name) {
        return name.replace('.', ' ').replace('-', ' ');
    }

    private static String option(Ask ask, @Nullable Object value) {
        String name = ask.option().replace('-', ' ');
        if (value == null || (value instanceof List<?> list && list.isEmpty())) {
            return "";
        }
        return value instanceof Boolean yes ? yes ? name : name + " no" : name + " " + value(value);
    }

    private static String value(Object value) {
        if (value instanceof List<?> list) {
            String apart = !list.isEmpty() && list.get(0) instanceof String ? "; " : " ";
            return list.stream().map(FactWords::value).collect(Collectors.joining(apart));
        }
        return value instanceof Enum<?> choice ? Words.of(choice) : value.toString();
    }

    private FactWords() {}
}

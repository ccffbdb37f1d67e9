package bedledger.projections.history;

import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Ask;
import bedledger.language.Condition;
import bedledger.language.Fact;
import bedledger.language.Feedstock;
import bedledger.language.MaterialName;
import bedledger.language.Words;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A fact as one phrase, such as "flail: N1 N2; passes 2; half-bed yes", made from what its kind asks for. */
public final class FactWords {
    private FactWords() {}

    /** The phrase; what was not recorded is left out. */
    public static String of(Fact fact) {
        ActKind kind = Acts.of(fact.getClass());
        String bare = kind.asks().stream()
                .filter(Ask::bare)
                .map(ask -> value(ask, fact))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" "));
        Stream<String> named = kind.asks().stream()
                .filter(ask -> !ask.bare())
                .filter(ask -> !value(ask, fact).isEmpty())
                .map(ask -> ask.option() + " " + value(ask, fact));
        String said = Stream.concat(Stream.of(bare), named)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
        return said.isEmpty() ? name(kind) : name(kind) + ": " + said;
    }

    static String name(ActKind kind) {
        return kind.word().isEmpty() ? kind.name() : kind.word();
    }

    private static String value(Ask ask, Fact fact) {
        Object value = ask.in(fact);
        if (value == null) {
            return "";
        }
        return value instanceof List<?> several
                ? several.stream().map(FactWords::one).collect(Collectors.joining(between(ask.type())))
                : one(value);
    }

    private static String between(Class<?> type) {
        boolean wordy = type == Condition.class || type == MaterialName.class;
        return wordy ? "; " : type == Feedstock.class ? ", " : " ";
    }

    private static String one(Object value) {
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        return value instanceof Enum<?> choice ? Words.of(choice) : value.toString();
    }
}

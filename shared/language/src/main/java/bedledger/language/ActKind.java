package bedledger.language;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A kind of act, as its record describes it; what it asks for is read from the record when it is first wanted. */
public final class ActKind {
    private final Act act;
    private final Class<? extends Fact> type;
    private @Nullable List<Ask> asks;

    private ActKind(Act act, Class<? extends Fact> type) {
        this.act = act;
        this.type = type;
    }

    static ActKind of(Class<? extends Fact> type) {
        Act act = type.getAnnotation(Act.class);
        if (act == null) {
            throw new IllegalStateException(type + " has no @Act");
        }
        return new ActKind(act, type);
    }

    /** The word of {@code did}; empty for what has a command of its own. */
    public String word() {
        return act.word();
    }

    /** The stored name. */
    public String name() {
        return act.name();
    }

    public int revision() {
        return act.revision();
    }

    public String help() {
        return act.help();
    }

    public String example() {
        return act.example();
    }

    public Caution caution() {
        return act.caution();
    }

    public Class<? extends Fact> type() {
        return type;
    }

    /** What it asks for, in the order of the record. */
    public synchronized List<Ask> asks() {
        if (asks == null) {
            asks = Arrays.stream(type.getRecordComponents()).map(Ask::of).toList();
        }
        return asks;
    }

    /** Makes the fact; a field that is missing from the map was not recorded, and a missing list is empty. */
    public Fact make(Map<String, ?> values) {
        Object[] arguments = asks().stream()
                .map(ask -> ask.list()
                        ? values.containsKey(ask.name()) ? values.get(ask.name()) : List.of()
                        : values.get(ask.name()))
                .toArray();
        try {
            return constructor().newInstance(arguments);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof BadValue bad) {
                throw bad;
            }
            throw new IllegalStateException(name(), refused.getCause());
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(name(), impossible);
        }
    }

    private Constructor<? extends Fact> constructor() throws NoSuchMethodException {
        return type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new));
    }

    List<Place> places(Fact fact) {
        return asks().stream()
                .filter(ask -> Place.class.isAssignableFrom(ask.type()) || Located.class.isAssignableFrom(ask.type()))
                .map(ask -> ask.in(fact))
                .flatMap(value -> value instanceof List<?> several ? several.stream() : Stream.ofNullable(value))
                .map(value -> value instanceof Located part ? part.place() : (Place) value)
                .distinct()
                .toList();
    }
}

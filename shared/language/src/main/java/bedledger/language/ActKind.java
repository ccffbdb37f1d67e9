package bedledger.language;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A kind of act, as its record describes it; what it asks for is read from the record when it is first wanted. */
public final class ActKind {
    private final Act act;
    private final Class<? extends Fact> type;
    private @Nullable List<Ask> asks;
    private @Nullable List<Ask> whereAsked;
    private @Nullable Constructor<? extends Fact> constructor;

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
        List<Ask> wanted = asks();
        Object[] arguments = new Object[wanted.size()];
        for (int at = 0; at < arguments.length; at++) {
            Ask ask = wanted.get(at);
            Object value = values.get(ask.name());
            arguments[at] = value == null && ask.list() ? List.of() : value;
        }
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

    private synchronized Constructor<? extends Fact> constructor() throws NoSuchMethodException {
        if (constructor == null) {
            constructor = type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new));
        }
        return constructor;
    }

    List<Place> places(Fact fact) {
        Set<Place> places = new LinkedHashSet<>();
        for (Ask ask : whereAsked()) {
            Object value = ask.in(fact);
            if (value instanceof List<?> several) {
                several.forEach(one -> places.add(place(one)));
            } else if (value != null) {
                places.add(place(value));
            }
        }
        return List.copyOf(places);
    }

    private static Place place(Object value) {
        return value instanceof Located part ? part.place() : (Place) value;
    }

    private synchronized List<Ask> whereAsked() {
        if (whereAsked == null) {
            whereAsked = asks().stream()
                    .filter(ask ->
                            Place.class.isAssignableFrom(ask.type()) || Located.class.isAssignableFrom(ask.type()))
                    .toList();
        }
        return whereAsked;
    }
}

package bedledger.language;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A kind of act, as its record describes it.
 *
 * @param word the word of {@code did}; empty for what has a command of its own
 * @param name the stored name
 * @param asks what it asks for, in the order of the record
 */
public record ActKind(
        String word,
        String name,
        int revision,
        String help,
        String example,
        Caution caution,
        Class<? extends Fact> type,
        List<Ask> asks) {

    static ActKind of(Class<? extends Fact> type) {
        Act act = type.getAnnotation(Act.class);
        if (act == null) {
            throw new IllegalStateException(type + " has no @Act");
        }
        List<Ask> asks = Arrays.stream(type.getRecordComponents()).map(Ask::of).toList();
        return new ActKind(
                act.word(), act.name(), act.revision(), act.help(), act.example(), act.caution(), type, asks);
    }

    /** Makes the fact; a field that is missing from the map was not recorded, and a missing list is empty. */
    public Fact make(Map<String, ?> values) {
        Object[] arguments = asks.stream()
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
            throw new IllegalStateException(name, refused.getCause());
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(name, impossible);
        }
    }

    private Constructor<? extends Fact> constructor() throws NoSuchMethodException {
        return type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new));
    }

    List<Place> places(Fact fact) {
        return asks.stream()
                .filter(ask -> Place.class.isAssignableFrom(ask.type()) || Located.class.isAssignableFrom(ask.type()))
                .map(ask -> ask.in(fact))
                .flatMap(value -> value instanceof List<?> several ? several.stream() : Stream.ofNullable(value))
                .map(value -> value instanceof Located part ? part.place() : (Place) value)
                .distinct()
                .toList();
    }
}

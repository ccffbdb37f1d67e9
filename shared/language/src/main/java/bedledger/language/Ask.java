package bedledger.language;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import org.jspecify.annotations.Nullable;

/**
 * One field that a kind of act asks for.
 *
 * @param name the field's name as stored, in camel case
 * @param option the same in the words of the command line and the sheet, as in {@code half-bed}
 * @param type the type of the value, or of each value of a list
 * @param list whether several values are taken
 * @param required whether the act can be written without it
 * @param given whether the program gives a required value where none is said
 * @param bare whether it is written right after the word
 * @param help what it asks for, as a phrase
 */
public record Ask(
        String name,
        String option,
        Class<?> type,
        boolean list,
        boolean required,
        boolean given,
        boolean bare,
        String help,
        int least,
        int most,
        RecordComponent component) {

    static Ask of(RecordComponent component) {
        Asks asks = component.getAnnotation(Asks.class);
        boolean list = component.getType() == java.util.List.class;
        Class<?> type = list
                ? (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0]
                : component.getType();
        boolean nullable = component.getAnnotatedType().isAnnotationPresent(Nullable.class);
        return new Ask(
                component.getName(),
                Words.kebab(component.getName()),
                type,
                list,
                list ? !asks.optional() : !nullable,
                asks.given(),
                asks.bare(),
                asks.value(),
                asks.least(),
                asks.most(),
                component);
    }

    /** The value this field has in a fact; null where it was not recorded. */
    public @Nullable Object in(Fact fact) {
        try {
            return component.getAccessor().invoke(fact);
        } catch (IllegalAccessException | InvocationTargetException impossible) {
            throw new IllegalStateException(component + " of " + fact.getClass(), impossible);
        }
    }
}

package bedledger.language;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Says what one field of an act asks for; a field that is not {@code @Nullable} and not a list is required. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Asks {
    /** Help, as a phrase. */
    String value();

    /** Whether it is written right after the word, without {@code --name}. */
    boolean bare() default false;

    /** Whether a list may be left empty. */
    boolean optional() default false;

    /** Whether the program gives a required value where none is said. */
    boolean given() default false;

    /** The least whole number taken. */
    int least() default 0;

    /** The largest whole number taken. */
    int most() default 1_000_000;
}

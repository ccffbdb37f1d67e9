package bedledger.language;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Describes a kind of act once, for the command line, the sheet and the manual. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Act {
    /** The word of {@code did}; empty for what has a command of its own. */
    String word() default "";

    /** The stored name, {@code stream.fact}; never changes once released. */
    String name();

    int revision() default 1;

    /** One sentence for the help, in the trade's words. */
    String help();

    /** An example as typed after {@code bedledger}. */
    String example() default "";

    Caution caution() default Caution.NONE;
}

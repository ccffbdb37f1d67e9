package bedledger.cli.report;

import com.github.mustachejava.DefaultMustacheFactory;
import com.github.mustachejava.Mustache;
import com.github.mustachejava.reflect.MissingWrapper;
import com.github.mustachejava.reflect.ReflectionObjectHandler;
import com.github.mustachejava.util.Wrapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;

/**
 * The report's templates: a name that no view has is an error, and whatever is filled in is escaped for HTML and XML.
 *
 * <p>Characters that XML cannot hold become U+FFFD; those that turn the direction of reading are spelt out, so that a note cannot make
 * a line read otherwise than it is written.
 */
final class Templates extends DefaultMustacheFactory {
    /** One for all: a template keeps how it found each name, which is most of the work of a page. */
    static final Templates ALL = new Templates();

    private Templates() {
        super("bedledger/cli/report");
        setObjectHandler(new Strict());
    }

    Mustache report() {
        return compile("report.mustache");
    }

    @Override
    public void encode(String value, Writer writer) {
        try {
            writer.write(escaped(value));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static String escaped(String value) {
        StringBuilder safe = new StringBuilder(value.length() + 16);
        value.codePoints().forEach(point -> escape(point, safe));
        return safe.toString();
    }

    private static void escape(int point, StringBuilder safe) {
        switch (point) {
            case '&' -> safe.append("&amp;");
            case '<' -> safe.append("&lt;");
            case '>' -> safe.append("&gt;");
            case '"' -> safe.append("&quot;");
            case '\'' -> safe.append("&#39;");
            default -> {
                if (turns(point)) {
                    safe.append("[U+%04X]".formatted(point));
                } else {
                    safe.appendCodePoint(canStand(point) ? point : 0xFFFD);
                }
            }
        }
    }

    /** Embedding, override and isolate controls of the Unicode bidirectional algorithm (UAX #9). */
    private static boolean turns(int point) {
        return (point >= 0x202A && point <= 0x202E) || (point >= 0x2066 && point <= 0x2069);
    }

    /** XML 1.0, production 2, less the C1 controls. */
    private static boolean canStand(int point) {
        return point == '\t'
                || point == '\n'
                || (point >= 0x20 && point < 0x7F)
                || (point >= 0xA0 && point <= 0xD7FF)
                || (point >= 0xE000 && point <= 0xFFFD)
                || point >= 0x10000;
    }

    private static final class Strict extends ReflectionObjectHandler {
        @Override
        public Wrapper find(String name, List<Object> scopes) {
            Wrapper found = super.find(name, scopes);
            if (found instanceof MissingWrapper) {
                throw new IllegalStateException("The template asks for '" + name + "', which no view has.");
            }
            return found;
        }
    }
}

package bedledger.cli.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/** The typeface of the charts and of paper: Liberation Serif 2, under the SIL Open Font License 1.1. */
public final class Faces {
    public static final String FAMILY = "Liberation Serif";

    private static final class Loaded {
        static final Font PLAIN = load("Regular");
        static final Font BOLD = load("Bold");
    }

    static Font plain(float size) {
        return Loaded.PLAIN.deriveFont(size);
    }

    static Font bold(float size) {
        return Loaded.BOLD.deriveFont(size);
    }

    /** Whether the plain face has a letter. */
    public static boolean has(int codePoint) {
        return Loaded.PLAIN.canDisplay(codePoint);
    }

    /** A face as it lies on the class path: Regular, Bold, Italic or BoldItalic. */
    public static InputStream open(String style) {
        return Objects.requireNonNull(
                Faces.class.getResourceAsStream("/liberation/LiberationSerif-" + style + ".ttf"),
                "the font is not on the class path");
    }

    private static Font load(String style) {
        try (InputStream in = open(style)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (FontFormatException broken) {
            throw new IllegalStateException("the font that comes with the program cannot be read", broken);
        }
    }

    private Faces() {}
}

package bedledger.cli.chart;

import java.awt.Color;

/**
 * How a kind of thing is filled.
 *
 * @param letter stands in it wherever there is room
 * @param name what it stands for
 * @param pattern told apart without any colour
 */
public record Swatch(String letter, String name, Color colour, Pattern pattern) {
    /** What fills a shape beside its colour. */
    public enum Pattern {
        SOLID,
        /** Lines rising to the right. */
        HATCHED,
        DOTTED,
        /** Nothing but its outline. */
        EMPTY
    }

    public Swatch with(Pattern other) {
        return new Swatch(letter, name, colour, other);
    }
}

package bedledger.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** What the fills of a group of charts stand for. */
public record Key(String id, String title, List<Swatch> swatches, int columns) implements Drawing {
    private static final int ROW = 24;
    private static final int BOX = 34;
    private static final int WIDE = 588;
    private static final float SIZE = 12.5f;

    public Key {
        swatches = List.copyOf(swatches);
    }

    @Override
    public String description() {
        return String.join(
                "; ",
                swatches.stream()
                        .map(swatch -> swatch.letter() + " " + swatch.name() + ", " + pattern(swatch))
                        .toList());
    }

    private static String pattern(Swatch swatch) {
        return switch (swatch.pattern()) {
            case SOLID -> "solid";
            case HATCHED -> "hatched";
            case DOTTED -> "dotted";
            case EMPTY -> "empty";
        };
    }

    @Override
    public int width() {
        return WIDE;
    }

    @Override
    public int height() {
        return (swatches.size() + columns - 1) / columns * ROW + 4;
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area) {
        for (int at = 0; at < swatches.size(); at++) {
            double x = area.getX() + at % columns * (WIDE / columns) + 1;
            double y = area.getY() + (at / columns) * ROW + 3;
            Rectangle2D box = new Rectangle2D.Double(x, y, BOX, ROW - 6);
            Ink.fill(graphics, box, swatches.get(at));
            Ink.letter(graphics, box, swatches.get(at).letter(), SIZE);
            Ink.words(graphics, swatches.get(at).name(), x + BOX + 7, y + ROW / 2.0 + 1, 0, Faces.plain(SIZE));
        }
    }
}

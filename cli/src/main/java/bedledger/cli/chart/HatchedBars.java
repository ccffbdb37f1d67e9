package bedledger.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.RectangularShape;
import java.util.List;
import org.jfree.chart.renderer.category.BarPainter;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.ui.RectangleEdge;

/** Paints each part of a bar with its swatch and, where there is room, its letter. */
final class HatchedBars extends StackedBarRenderer {
    private static final long serialVersionUID = 1L;
    private static final float SIZE = 12;

    @SuppressWarnings("serial") // a drawing is never written
    private final List<Swatch> swatches;

    HatchedBars(List<Swatch> swatches) {
        this.swatches = swatches;
        setShadowVisible(false);
        setMaximumBarWidth(0.16);
        setBarPainter(new Painter());
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }

    private final class Painter implements BarPainter {
        @Override
        public void paintBar(
                Graphics2D graphics,
                BarRenderer renderer,
                int row,
                int column,
                RectangularShape bar,
                RectangleEdge base) {
            Swatch swatch = swatches.get(row);
            Ink.fill(graphics, bar.getFrame(), swatch);
            Ink.letter(graphics, bar.getFrame(), swatch.letter(), SIZE);
        }

        @Override
        public void paintBarShadow(
                Graphics2D graphics,
                BarRenderer renderer,
                int row,
                int column,
                RectangularShape bar,
                RectangleEdge base,
                boolean pegShadow) {}
    }
}

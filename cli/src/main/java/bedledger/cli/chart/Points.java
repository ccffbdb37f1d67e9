package bedledger.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/**
 * Measurements along the days, each a shape of its own with its letters beside it; no line is drawn between them.
 *
 * @param most the top of the scale, which begins at nothing
 * @param unit stands above the scale
 */
public record Points(
        String id,
        String title,
        String description,
        int width,
        int height,
        List<Strip.Season> seasons,
        List<Point> points,
        double most,
        String unit)
        implements Drawing {
    private static final float SIZE = 12.5f;
    private static final double RADIUS = 4.5;
    private static final double HEADROOM = 1.25;
    /** Days after the last season, so that a point on its last day is whole. */
    private static final int ROOM = 60;

    /**
     * One measurement.
     *
     * @param shape a number of its own for each way of measuring
     * @param label stands above it; may be empty
     */
    public record Point(LocalDate day, double value, int shape, String label) {}

    public Points {
        seasons = List.copyOf(seasons);
        points = List.copyOf(points);
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area) {
        List<Days.Mark> marks = seasons.stream()
                .map(season -> new Days.Mark(season.from(), season.name()))
                .toList();
        Days days = new Days(
                seasons.get(0).from(), seasons.get(seasons.size() - 1).to().plusDays(ROOM), marks);
        XYPlot plot = new XYPlot(null, days, scale(), new XYLineAndShapeRenderer());
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setRangeGridlinePaint(Ink.FAINT);
        plot.setRangeGridlineStroke(new BasicStroke(0.8f));
        plot.setDomainGridlinePaint(Ink.FAINT);
        plot.setDomainGridlineStroke(new BasicStroke(0.8f));
        plot.setInsets(new RectangleInsets(24, 0, 0, 10));
        plot.addAnnotation(new Content());
        JFreeChart chart = new JFreeChart(null, Faces.plain(SIZE), plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        chart.draw(graphics, area);
        Ink.words(graphics, unit, area.getX() + 2, area.getY() + SIZE, 0, Faces.plain(SIZE));
    }

    private NumberAxis scale() {
        NumberAxis axis = new NumberAxis();
        axis.setRange(0, most > 0 ? most * HEADROOM : 1);
        axis.setTickLabelFont(Faces.plain(SIZE));
        axis.setTickLabelPaint(Ink.BLACK);
        axis.setAxisLineVisible(false);
        axis.setTickMarksVisible(false);
        axis.setNumberFormatOverride(new Plain());
        return axis;
    }

    /** A circle, a square, a triangle, a diamond; further ways of measuring begin again with a circle. */
    private static Shape shape(int which) {
        Path2D path = new Path2D.Double();
        switch (which % 4) {
            case 1 -> path.append(new Rectangle2D.Double(-1, -1, 2, 2), false);
            case 2 -> {
                path.moveTo(0, -1.2);
                path.lineTo(1.2, 1);
                path.lineTo(-1.2, 1);
                path.closePath();
            }
            case 3 -> {
                path.moveTo(0, -1.4);
                path.lineTo(1.4, 0);
                path.lineTo(0, 1.4);
                path.lineTo(-1.4, 0);
                path.closePath();
            }
            default -> path.append(new Ellipse2D.Double(-1, -1, 2, 2), false);
        }
        return path;
    }

    private final class Content extends AbstractXYAnnotation {
        private static final long serialVersionUID = 1L;

        @Override
        public void draw(
                Graphics2D graphics,
                XYPlot plot,
                Rectangle2D area,
                ValueAxis days,
                ValueAxis values,
                int index,
                PlotRenderingInfo info) {
            for (int at = 0; at < points.size(); at++) {
                Point point = points.get(at);
                double x = days.valueToJava2D(Days.at(point.day()), area, RectangleEdge.BOTTOM);
                double y = values.valueToJava2D(point.value(), area, RectangleEdge.LEFT);
                AffineTransform here = AffineTransform.getTranslateInstance(x, y);
                here.scale(RADIUS, RADIUS);
                graphics.setPaint(point.shape() % 2 == 0 ? Ink.BLACK : Ink.PAPER);
                graphics.fill(here.createTransformedShape(shape(point.shape())));
                graphics.setPaint(Ink.BLACK);
                graphics.setStroke(new BasicStroke(1.4f));
                graphics.draw(here.createTransformedShape(shape(point.shape())));
                // Above and below by turns: two tests of one winter stand side by side.
                double label = at % 2 == 0 ? y - RADIUS - 5 : y + RADIUS + SIZE + 1;
                Ink.words(graphics, point.label(), x, label, 0.5, Faces.plain(SIZE));
            }
        }
    }
}

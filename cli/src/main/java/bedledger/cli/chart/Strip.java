package bedledger.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/**
 * A line for each bed along the days: what covered it, or how deep it was worked.
 *
 * @param rows the beds, from the top
 * @param spans boxes along the days
 * @param strokes lines down from the top of a row
 * @param ruled whether each row begins with a line, from which depth is measured
 */
public record Strip(
        String id,
        String title,
        String description,
        int width,
        List<String> rows,
        List<Season> seasons,
        List<Span> spans,
        List<Stroke> strokes,
        boolean ruled)
        implements Drawing {
    private static final float SIZE = 12.5f;
    private static final int ROW = 34;
    private static final int AROUND = 34;
    private static final float LETTER = 11.5f;

    /** A season along the days. */
    public record Season(String name, LocalDate from, LocalDate to) {}

    /** Days on end in one row, the last one included. */
    public record Span(int row, LocalDate from, LocalDate to, Swatch swatch) {}

    /**
     * A stroke down from the top of a row.
     *
     * @param depth between 0 and 1, where 1 is the whole row; below 0 where it is not known
     * @param count so many strokes side by side
     */
    public record Stroke(int row, LocalDate day, double depth, int count, boolean heavy) {}

    public Strip {
        rows = List.copyOf(rows);
        seasons = List.copyOf(seasons);
        spans = List.copyOf(spans);
        strokes = List.copyOf(strokes);
    }

    @Override
    public int height() {
        return rows.size() * ROW + AROUND;
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area) {
        List<Days.Mark> marks = seasons.stream()
                .map(season -> new Days.Mark(season.from(), season.name()))
                .toList();
        Days days =
                new Days(seasons.get(0).from(), seasons.get(seasons.size() - 1).to(), marks);
        XYPlot plot = new XYPlot(null, days, beds(), new XYLineAndShapeRenderer());
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setDomainGridlinePaint(Ink.RULE);
        plot.setDomainGridlineStroke(new BasicStroke(0.8f));
        plot.setDomainAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        plot.setInsets(new RectangleInsets(2, 0, 0, 4));
        plot.addAnnotation(new Content());
        JFreeChart chart = new JFreeChart(null, Faces.plain(SIZE), plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        chart.draw(graphics, area);
    }

    private SymbolAxis beds() {
        SymbolAxis axis = new SymbolAxis(null, rows.toArray(String[]::new));
        axis.setInverted(true);
        axis.setRange(-0.5, rows.size() - 0.5);
        axis.setGridBandsVisible(false);
        axis.setTickLabelFont(Faces.plain(SIZE));
        axis.setTickLabelPaint(Ink.BLACK);
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        return axis;
    }

    private final class Content extends AbstractXYAnnotation {
        private static final long serialVersionUID = 1L;

        @Override
        public void draw(
                Graphics2D graphics,
                XYPlot plot,
                Rectangle2D area,
                ValueAxis days,
                ValueAxis beds,
                int index,
                PlotRenderingInfo info) {
            if (ruled) {
                rules(graphics, area, beds);
            }
            spans.forEach(span -> span(graphics, area, days, beds, span));
            strokes.forEach(stroke -> stroke(graphics, area, days, beds, stroke));
        }

        private void rules(Graphics2D graphics, Rectangle2D area, ValueAxis beds) {
            graphics.setPaint(Ink.RULE);
            graphics.setStroke(new BasicStroke(0.8f));
            for (int row = 0; row < rows.size(); row++) {
                double y = y(area, beds, row - 0.38);
                graphics.draw(new Line2D.Double(area.getMinX(), y, area.getMaxX(), y));
            }
        }

        private void span(Graphics2D graphics, Rectangle2D area, ValueAxis days, ValueAxis beds, Span span) {
            double left = x(area, days, Days.at(span.from()));
            double right = x(area, days, Days.at(span.to()) + 1);
            double top = y(area, beds, span.row() - 0.33);
            double bottom = y(area, beds, span.row() + 0.33);
            Rectangle2D box = new Rectangle2D.Double(left, top, right - left, bottom - top);
            Ink.fill(graphics, box, span.swatch());
            Ink.letter(graphics, box, span.swatch().letter(), LETTER);
        }

        private void stroke(Graphics2D graphics, Rectangle2D area, ValueAxis days, ValueAxis beds, Stroke stroke) {
            double top = y(area, beds, stroke.row() - 0.38);
            double full = y(area, beds, stroke.row() + 0.42) - top;
            graphics.setPaint(Ink.BLACK);
            for (int one = 0; one < stroke.count(); one++) {
                double x = x(area, days, Days.at(stroke.day()) + 0.5) + one * 3.2;
                if (stroke.depth() < 0) {
                    graphics.setStroke(new BasicStroke(1.1f));
                    graphics.draw(new Ellipse2D.Double(x - 2.2, top + 2, 4.4, 4.4));
                } else {
                    graphics.setStroke(
                            new BasicStroke(stroke.heavy() ? 2.2f : 1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
                    graphics.draw(new Line2D.Double(x, top, x, top + full * stroke.depth()));
                }
            }
        }

        private double x(Rectangle2D area, ValueAxis days, double value) {
            return days.valueToJava2D(value, area, RectangleEdge.BOTTOM);
        }

        private double y(Rectangle2D area, ValueAxis beds, double value) {
            return beds.valueToJava2D(value, area, RectangleEdge.LEFT);
        }
    }
}

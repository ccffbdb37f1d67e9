package bedledger.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.AbstractAnnotation;
import org.jfree.chart.annotations.CategoryAnnotation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.category.DefaultCategoryDataset;

/**
 * Figures side by side, each from its low to its high end about a line at nothing: they may lie above or below it.
 *
 * @param scale what the scale holds, the same in charts that are compared
 * @param unit stands above the scale
 * @param figures writes the best value over each mark; an empty word where there is no room for it
 */
public record Ranges(
        String id,
        String title,
        String description,
        int width,
        int height,
        List<Group> groups,
        Scale scale,
        String unit,
        DoubleFunction<String> figures)
        implements Drawing {
    private static final float SIZE = 12.5f;
    private static final double RADIUS = 4.5;
    private static final double HEADROOM = 0.16;
    /** A box is at most so wide; more would look like a weight. */
    private static final double WIDEST = 26;

    /** Marks over one label; no two groups have the same. */
    public record Group(String label, List<RangeMark> marks) {
        public Group {
            marks = List.copyOf(marks);
        }
    }

    /** The lowest and the highest that several groups come to; nothing is always between them. */
    public record Scale(double lowest, double highest) {
        public static Scale of(List<Group> groups) {
            return new Scale(
                    ends(groups, true).min().orElse(0),
                    ends(groups, false).max().orElse(0));
        }

        private static DoubleStream ends(List<Group> groups, boolean low) {
            DoubleStream ends = groups.stream()
                    .flatMap(group -> group.marks().stream())
                    .mapToDouble(mark -> low ? mark.bottom() : mark.top());
            return DoubleStream.concat(DoubleStream.of(0), ends);
        }
    }

    public Ranges {
        groups = List.copyOf(groups);
    }

    /** What a chart shows over a label, for whoever checks it against the table. */
    public Optional<Group> group(String label) {
        return groups.stream().filter(group -> group.label().equals(label)).findFirst();
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area) {
        DefaultCategoryDataset labels = new DefaultCategoryDataset();
        groups.forEach(group -> labels.addValue(null, "", group.label()));
        CategoryPlot plot = new CategoryPlot(labels, across(), up(), new BarRenderer());
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setRangeGridlinePaint(Ink.FAINT);
        plot.setRangeGridlineStroke(new BasicStroke(0.8f));
        plot.setInsets(new RectangleInsets(24, 0, 0, 10));
        plot.addAnnotation(new Marks());
        JFreeChart chart = new JFreeChart(null, Faces.plain(SIZE), plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        chart.draw(graphics, area);
        Ink.words(graphics, unit, area.getX() + 2, area.getY() + SIZE, 0, Faces.plain(SIZE));
    }

    private static CategoryAxis across() {
        CategoryAxis axis = new CategoryAxis();
        axis.setTickLabelFont(Faces.plain(SIZE));
        axis.setTickLabelPaint(Ink.BLACK);
        axis.setAxisLineVisible(false);
        axis.setTickMarksVisible(false);
        axis.setLowerMargin(0.02);
        axis.setUpperMargin(0.02);
        axis.setCategoryMargin(0.1);
        return axis;
    }

    private NumberAxis up() {
        double room = HEADROOM * (scale.highest() - scale.lowest());
        NumberAxis axis = new NumberAxis();
        axis.setRange(
                scale.lowest() < 0 ? scale.lowest() - room : 0,
                scale.highest() > 0 ? scale.highest() + room : room > 0 ? room : 1);
        axis.setTickLabelFont(Faces.plain(SIZE));
        axis.setTickLabelPaint(Ink.BLACK);
        axis.setAxisLineVisible(false);
        axis.setTickMarksVisible(false);
        axis.setNumberFormatOverride(new Plain());
        return axis;
    }

    private final class Marks extends AbstractAnnotation implements CategoryAnnotation {
        private static final long serialVersionUID = 1L;

        @Override
        public void draw(Graphics2D graphics, CategoryPlot plot, Rectangle2D area, CategoryAxis across, ValueAxis up) {
            line(graphics, area.getMinX(), y(up, area, 0), area.getMaxX(), y(up, area, 0), 1.2f);
            for (int at = 0; at < groups.size(); at++) {
                double start = across.getCategoryStart(at, groups.size(), area, plot.getDomainAxisEdge());
                double end = across.getCategoryEnd(at, groups.size(), area, plot.getDomainAxisEdge());
                List<RangeMark> marks = groups.get(at).marks();
                for (int one = 0; one < marks.size(); one++) {
                    double each = (end - start) / marks.size();
                    mark(graphics, area, up, marks.get(one), start + (one + 0.5) * each, Math.min(WIDEST, each * 0.72));
                }
            }
        }

        private void mark(Graphics2D graphics, Rectangle2D area, ValueAxis up, RangeMark mark, double x, double wide) {
            double top = y(up, area, mark.top());
            double bottom = y(up, area, mark.bottom());
            double best = y(up, area, mark.best());
            if (mark.measured()) {
                dot(graphics, x, best, top, bottom);
            } else {
                if (mark.low().isPresent()) {
                    Ink.fill(graphics, new Rectangle2D.Double(x - wide / 2, top, wide, bottom - top), mark.swatch());
                }
                line(graphics, x - wide / 2 - 3, best, x + wide / 2 + 3, best, 2.6f);
                Ink.words(graphics, mark.swatch().letter(), x, bottom + SIZE, 0.5, Faces.bold(SIZE));
            }
            String over = figures.apply(mark.best()) + (mark.incomplete() ? "?" : "");
            if (!over.isEmpty()) {
                Ink.words(graphics, over, x, top - (mark.measured() ? RADIUS : 0) - 4, 0.5, Faces.plain(SIZE));
            }
        }

        private static void dot(Graphics2D graphics, double x, double best, double top, double bottom) {
            if (bottom - top > 0.1) {
                line(graphics, x, top, x, bottom, 1.2f);
                line(graphics, x - 4, top, x + 4, top, 1.2f);
                line(graphics, x - 4, bottom, x + 4, bottom, 1.2f);
            }
            graphics.setPaint(Ink.BLACK);
            graphics.fill(new Ellipse2D.Double(x - RADIUS, best - RADIUS, 2 * RADIUS, 2 * RADIUS));
        }

        private static void line(Graphics2D graphics, double x1, double y1, double x2, double y2, float width) {
            graphics.setPaint(Ink.BLACK);
            graphics.setStroke(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            graphics.draw(new Line2D.Double(x1, y1, x2, y2));
        }

        private static double y(ValueAxis up, Rectangle2D area, double value) {
            return up.valueToJava2D(value, area, RectangleEdge.LEFT);
        }

        @Override
        public Object clone() throws CloneNotSupportedException {
            return super.clone();
        }
    }
}

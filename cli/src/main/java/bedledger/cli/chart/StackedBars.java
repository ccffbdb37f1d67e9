package bedledger.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.AbstractAnnotation;
import org.jfree.chart.annotations.CategoryAnnotation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.util.SortOrder;
import org.jfree.data.category.DefaultCategoryDataset;

/**
 * Bars of several sources one upon the other, with the range of the whole as a line and its figure on top.
 *
 * @param most the top of the scale, the same in charts that are compared
 * @param unit stands above the scale
 * @param figures writes the figure on top
 */
public record StackedBars(
        String id,
        String title,
        String description,
        int width,
        int height,
        List<Bar> bars,
        double most,
        String unit,
        DoubleFunction<String> figures)
        implements Drawing {
    private static final float SIZE = 12.5f;
    private static final double HEADROOM = 1.12;

    public StackedBars {
        bars = List.copyOf(bars);
    }

    /** The highest that several groups of bars come, so that one scale holds them all. */
    public static double most(List<List<Bar>> groups) {
        return groups.stream().flatMap(List::stream).mapToDouble(Bar::top).max().orElse(0);
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area) {
        List<Swatch> swatches = swatches();
        HatchedBars renderer = new HatchedBars(swatches);
        CategoryPlot plot = new CategoryPlot(data(swatches), across(), scale(), renderer);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setRangeGridlinePaint(Ink.FAINT);
        plot.setRangeGridlineStroke(new BasicStroke(0.8f));
        plot.setColumnRenderingOrder(SortOrder.ASCENDING);
        plot.setInsets(new RectangleInsets(24, 0, 0, 10));
        plot.addAnnotation(new Tops());
        JFreeChart chart = new JFreeChart(null, Faces.plain(SIZE), plot, false);
        chart.setBackgroundPaint(null);
        chart.setAntiAlias(true);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        chart.draw(graphics, area);
        Ink.words(graphics, unit, area.getX() + 2, area.getY() + SIZE, 0, Faces.plain(SIZE));
    }

    private List<Swatch> swatches() {
        return bars.stream()
                .flatMap(bar -> bar.segments().stream())
                .map(Bar.Segment::swatch)
                .distinct()
                .sorted(java.util.Comparator.comparing(Swatch::letter).thenComparing(Swatch::pattern))
                .toList();
    }

    private DefaultCategoryDataset data(List<Swatch> swatches) {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        for (int row = 0; row < swatches.size(); row++) {
            for (int column = 0; column < bars.size(); column++) {
                Swatch swatch = swatches.get(row);
                double value = bars.get(column).segments().stream()
                        .filter(segment -> segment.swatch().equals(swatch))
                        .mapToDouble(Bar.Segment::value)
                        .sum();
                data.addValue(
                        (Number) (value > 0 ? value : null),
                        row,
                        bars.get(column).label());
            }
        }
        return data;
    }

    private CategoryAxis across() {
        CategoryAxis axis = new CategoryAxis();
        axis.setTickLabelFont(Faces.plain(SIZE));
        axis.setTickLabelPaint(Ink.BLACK);
        axis.setAxisLinePaint(Ink.BLACK);
        axis.setLowerMargin(0.04);
        axis.setUpperMargin(0.04);
        axis.setCategoryMargin(0.25);
        return axis;
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

    /** The range of each whole as a line beside its middle, its figure on top, and a mark where there is more that is not known. */
    private final class Tops extends AbstractAnnotation implements CategoryAnnotation {
        private static final long serialVersionUID = 1L;

        @Override
        public void draw(Graphics2D graphics, CategoryPlot plot, Rectangle2D area, CategoryAxis across, ValueAxis up) {
            for (int at = 0; at < bars.size(); at++) {
                Bar bar = bars.get(at);
                double x = across.getCategoryMiddle(at, bars.size(), area, plot.getDomainAxisEdge());
                double half = (across.getCategoryEnd(at, bars.size(), area, plot.getDomainAxisEdge())
                                - across.getCategoryStart(at, bars.size(), area, plot.getDomainAxisEdge()))
                        / 2;
                range(graphics, bar, x + half * 0.62, value -> up.valueToJava2D(value, area, RectangleEdge.LEFT));
                mark(graphics, bar, x, up.valueToJava2D(bar.top(), area, RectangleEdge.LEFT));
            }
        }

        private void range(Graphics2D graphics, Bar bar, double x, java.util.function.DoubleUnaryOperator y) {
            if (bar.low().isEmpty() || bar.high().isEmpty()) {
                return;
            }
            double low = y.applyAsDouble(bar.low().getAsDouble());
            double high = y.applyAsDouble(bar.high().getAsDouble());
            graphics.setPaint(Ink.BLACK);
            graphics.setStroke(new BasicStroke(1.2f));
            graphics.draw(new Line2D.Double(x, low, x, high));
            graphics.draw(new Line2D.Double(x - 3, low, x + 3, low));
            graphics.draw(new Line2D.Double(x - 3, high, x + 3, high));
        }

        private void mark(Graphics2D graphics, Bar bar, double x, double y) {
            String figure = bar.segments().isEmpty() ? "" : figures.apply(bar.total());
            String more = bar.incomplete() ? (figure.isEmpty() ? "?" : " + ?") : "";
            if (!(figure + more).isEmpty()) {
                Ink.words(graphics, figure + more, x, y - 4, 0.5, Faces.plain(SIZE));
            }
        }

        @Override
        public Object clone() throws CloneNotSupportedException {
            return super.clone();
        }
    }

    /** What a bar of a chart stands at, for whoever checks it against the table. */
    public Optional<Bar> bar(String label) {
        return bars.stream().filter(bar -> bar.label().equals(label)).findFirst();
    }

    /** All bars in words. */
    public static String words(List<Bar> bars, DoubleFunction<String> figures) {
        List<String> words = new ArrayList<>();
        bars.forEach(bar -> words.add(bar.label() + " " + figures.apply(bar.total())
                + (bar.incomplete() ? " and more that is not known" : "")));
        return String.join("; ", words);
    }
}

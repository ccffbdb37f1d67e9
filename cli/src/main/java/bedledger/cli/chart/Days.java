package bedledger.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** A scale of days, one mark where each season begins. */
final class Days extends NumberAxis {
    private static final long serialVersionUID = 1L;
    private static final float SIZE = 12.5f;

    @SuppressWarnings("serial") // a drawing is never written
    private final List<Mark> marks;

    /** Where a season begins, and what stands there. */
    record Mark(LocalDate day, String label) {}

    Days(LocalDate from, LocalDate to, List<Mark> marks) {
        this.marks = List.copyOf(marks);
        setRange(at(from), at(to) + 1);
        setTickLabelFont(Faces.plain(SIZE));
        setTickLabelPaint(Ink.BLACK);
        setAxisLinePaint(Ink.BLACK);
        setTickMarkPaint(Ink.BLACK);
    }

    static double at(LocalDate day) {
        return day.toEpochDay();
    }

    @Override
    @SuppressWarnings({"rawtypes", "unchecked"}) // as it is declared
    public List refreshTicks(Graphics2D graphics, AxisState state, Rectangle2D area, RectangleEdge edge) {
        List ticks = new ArrayList();
        for (Mark mark : marks) {
            if (getRange().contains(at(mark.day))) {
                ticks.add(new NumberTick(
                        TickType.MAJOR, at(mark.day), mark.label, TextAnchor.TOP_LEFT, TextAnchor.TOP_LEFT, 0));
            }
        }
        return ticks;
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}

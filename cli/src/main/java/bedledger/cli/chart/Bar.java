package bedledger.cli.chart;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One bar.
 *
 * @param label stands under it
 * @param segments from the bottom up, none below zero
 * @param low the low end of the whole; empty where no range is known
 * @param high its high end
 * @param incomplete whether there is more that is not known
 */
public record Bar(String label, List<Segment> segments, OptionalDouble low, OptionalDouble high, boolean incomplete) {
    /** A part of a bar. */
    public record Segment(Swatch swatch, double value) {
        public Segment {
            if (!(value >= 0)) {
                throw new IllegalArgumentException("a part of a bar is not below nothing: " + value);
            }
        }
    }

    public Bar {
        segments = List.copyOf(segments);
    }

    public double total() {
        return segments.stream().mapToDouble(Segment::value).sum();
    }

    double top() {
        return Math.max(total(), high.orElse(0));
    }
}

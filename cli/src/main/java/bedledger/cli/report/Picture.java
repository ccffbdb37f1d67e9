package bedledger.cli.report;

import bedledger.cli.chart.Drawing;
import bedledger.cli.chart.Svg;

/** A drawing in its frame, with the words under it; empty for a key. */
record Picture(Drawing drawing, String caption) {
    /** Wider than this does not fit the narrowest screen, so the drawing scrolls there. */
    private static final int FITS = 290;

    String svg() {
        return Svg.of(drawing);
    }

    String id() {
        return drawing.id();
    }

    boolean isCaptioned() {
        return !caption.isEmpty();
    }

    boolean scrolls() {
        return drawing.width() > FITS;
    }
}

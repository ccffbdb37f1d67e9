package bedledger.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Fills, outlines and words, drawn as plain lines so that every printer and reader shows the same. */
final class Ink {
    static final Color BLACK = new Color(0x1d1b18);
    static final Color SOFT = new Color(0x55504a);
    static final Color RULE = new Color(0x857e72);
    static final Color FAINT = new Color(0xd9d3c5);
    static final Color PAPER = Color.WHITE;
    private static final double STEP = 5;
    private static final double DOT = 1.7;
    private static final BasicStroke OUTLINE = new BasicStroke(0.8f);
    private static final BasicStroke HATCH = new BasicStroke(1.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);

    static void fill(Graphics2D graphics, Rectangle2D box, Swatch swatch) {
        boolean solid = swatch.pattern() == Swatch.Pattern.SOLID;
        graphics.setPaint(solid ? swatch.colour() : PAPER);
        graphics.fill(box);
        graphics.setPaint(swatch.colour());
        if (swatch.pattern() == Swatch.Pattern.HATCHED) {
            hatch(graphics, box);
        } else if (swatch.pattern() == Swatch.Pattern.DOTTED) {
            dots(graphics, box);
        }
        graphics.setPaint(BLACK);
        graphics.setStroke(OUTLINE);
        graphics.draw(box);
    }

    /** Lines x - y = const, cut at the box by hand: a clipping path is lost on some printers. */
    private static void hatch(Graphics2D graphics, Rectangle2D box) {
        graphics.setStroke(HATCH);
        double first = Math.ceil((box.getMinX() + box.getMinY()) / STEP) * STEP;
        for (double sum = first; sum < box.getMaxX() + box.getMaxY(); sum += STEP) {
            double left = Math.max(box.getMinX(), sum - box.getMaxY());
            double right = Math.min(box.getMaxX(), sum - box.getMinY());
            if (right - left > 0.2) {
                graphics.draw(new Line2D.Double(left, sum - left, right, sum - right));
            }
        }
    }

    private static void dots(Graphics2D graphics, Rectangle2D box) {
        for (double y = box.getMinY() + STEP / 2; y < box.getMaxY() - DOT; y += STEP) {
            for (double x = box.getMinX() + STEP / 2; x < box.getMaxX() - DOT; x += STEP) {
                graphics.fill(new Ellipse2D.Double(x, y, DOT, DOT));
            }
        }
    }

    /** A letter on a plate of paper in the middle of a box, if it fits. */
    static void letter(Graphics2D graphics, Rectangle2D box, String letter, float size) {
        Font font = Faces.bold(size);
        FontMetrics metrics = graphics.getFontMetrics(font);
        double width = metrics.stringWidth(letter) + 4;
        double height = size * 0.95;
        if (box.getWidth() < width + 2 || box.getHeight() < height + 1) {
            return;
        }
        double x = box.getCenterX() - width / 2;
        double y = box.getCenterY() - height / 2;
        graphics.setPaint(PAPER);
        graphics.fill(new Rectangle2D.Double(x, y, width, height));
        graphics.setPaint(BLACK);
        graphics.setFont(font);
        graphics.drawString(letter, (float) (x + 2), (float) (box.getCenterY() + size * 0.31));
    }

    /** Words whose middle, left or right end stands at x. */
    static void words(Graphics2D graphics, String text, double x, double y, double anchor, Font font) {
        graphics.setFont(font);
        graphics.setPaint(BLACK);
        double width = graphics.getFontMetrics(font).stringWidth(text);
        graphics.drawString(text, (float) (x - anchor * width), (float) y);
    }

    private Ink() {}
}

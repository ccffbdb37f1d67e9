package bedledger.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** A picture of some figures; whoever cannot see it has its title, its description and the table behind it. */
public interface Drawing {
    /** Unique on its page; letters, digits and hyphens. */
    String id();

    String title();

    /** What it shows, in a sentence or a few. */
    String description();

    /** In CSS pixels. */
    int width();

    /** In CSS pixels. */
    int height();

    void draw(Graphics2D graphics, Rectangle2D area);
}

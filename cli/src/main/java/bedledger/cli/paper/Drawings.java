package bedledger.cli.paper;

import bedledger.cli.chart.Drawing;
import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import org.w3c.dom.Element;

/** Draws the charts of a page straight onto paper: lines stay lines and words stay words. */
final class Drawings implements FSObjectDrawerFactory {
    static final String KIND = "application/x-drawing";
    private final Map<String, Drawing> byId;

    Drawings(Map<String, Drawing> byId) {
        this.byId = Map.copyOf(byId);
    }

    @Override
    public boolean isReplacedObject(Element element) {
        return element.getAttribute("type").equals(KIND) && byId.containsKey(element.getAttribute("data"));
    }

    @Override
    public FSObjectDrawer createDrawer(Element element) {
        Drawing drawing = byId.get(element.getAttribute("data"));
        if (drawing == null) {
            throw new IllegalStateException("The page asks for a drawing that was not handed in.");
        }
        return (object, x, y, width, height, device, context, dots) -> draw(drawing, x, y, width, height, device, dots);
    }

    private static Map<Shape, String> draw(
            Drawing drawing, double x, double y, double width, double height, OutputDevice device, int dots) {
        device.drawWithGraphics((float) x, (float) y, (float) width / dots, (float) height / dots, graphics -> {
            double scale = width / dots / drawing.width();
            graphics.scale(scale, scale);
            drawing.draw(graphics, new Rectangle2D.Double(0, 0, drawing.width(), drawing.height()));
        });
        return Map.of();
    }
}

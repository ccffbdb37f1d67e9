package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The questions of an inspector over a whole season fit a terminal, and a trace is drawn without boxes over each other. */
class DrawnTraceTest {
    @TempDir
    Path folder;

    @Test
    void answersFitEightyColumns() {
        Desk desk = Season.quickly(folder);
        for (String question : List.of(
                "gaps --on 2025-12-31",
                "balance beet",
                "balance pepper",
                "balance \"Feather meal 13-0-0\"",
                "trace invoice 214",
                "trace BT-9",
                "trace W1",
                "trace bed K3",
                "trace field Creek",
                "trace PEP-STORE",
                "trace KL-1025",
                "trace \"Own potting mix\"")) {
            desk.run(question + " --book farm").done().fits();
        }
    }

    @Test
    void drawsEveryThingOnceAndNoBoxOverAnother() throws Exception {
        Desk desk = Season.quickly(folder);
        desk.run("trace field Creek --on 2025-12-31 --svg creek.svg --book farm")
                .done();
        String svg = Files.readString(folder.resolve("creek.svg"));
        Document drawing = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));

        List<int[]> boxes = new ArrayList<>();
        NodeList groups = drawing.getElementsByTagName("g");
        for (int at = 0; at < groups.getLength(); at++) {
            Element box = (Element)
                    ((Element) groups.item(at)).getElementsByTagName("rect").item(0);
            boxes.add(new int[] {side(box, "x"), side(box, "y"), side(box, "width"), side(box, "height")});
        }
        assertThat(boxes).hasSizeGreaterThan(20);
        for (int one = 0; one < boxes.size(); one++) {
            for (int other = one + 1; other < boxes.size(); other++) {
                assertThat(overlap(boxes.get(one), boxes.get(other))).isFalse();
            }
        }
        desk.run("trace field Creek --svg creek.svg --book farm").refused(Exit.CANNOT_CREATE, "is there already");
    }

    private static int side(Element box, String name) {
        return Integer.parseInt(box.getAttribute(name));
    }

    private static boolean overlap(int[] one, int[] other) {
        return one[0] < other[0] + other[2]
                && other[0] < one[0] + one[2]
                && one[1] < other[1] + other[3]
                && other[1] < one[1] + one[3];
    }

    @Test
    void asksWhichThingIsMeantWhereSeveralHaveOneName() {
        Desk desk = Season.begun(folder);
        desk.typed("""
                        register-field A --gross 0.05ha --on 2025-03-01 --written 2025-03-01
                        build-pile A --on 2025-03-01
                        """, "did - --book farm").done();
        desk.run("trace A --book farm").refused(Exit.REFUSED, "trace field A, trace pile A");
        assertThat(desk.run("trace pile A --book farm").done().out()).contains("pile A: built 2025-03-01");
    }
}

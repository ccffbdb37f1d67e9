package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Contrast of the style sheet's own colours, reckoned by WCAG 2.2's definitions of relative luminance and contrast ratio.
 *
 * <p>The formulas are from memory of WCAG 2.2; black on white must give 21, which the definition of contrast ratio names.
 */
class ContrastTest {
    private static final Pattern NAMED = Pattern.compile("--([a-z]+): (#[0-9a-f]{6});");
    private static final Pattern TEXT = Pattern.compile("[ {;]color: ([^;]+);");
    private static final Pattern GROUND = Pattern.compile("background-color: ([^;]+);");
    private static final Pattern LINE =
            Pattern.compile("(?:border(?:-[a-z]+)?|outline): [^;]*?(var\\(--[a-z]+\\)|#[0-9a-f]+);");
    private static final double TEXT_RATIO = 4.5;
    private static final double LINE_RATIO = 3;

    private final String style =
            Desktop.withTheDemo().report("farm", "--on", "2025-12-31").style();
    private final Map<String, String> named = new HashMap<>();

    ContrastTest() {
        Matcher matcher = NAMED.matcher(style);
        while (matcher.find()) {
            named.put(matcher.group(1), matcher.group(2));
        }
    }

    @Test
    void blackOnWhiteIsTwentyOneToOne() {
        assertThat(ratio("#000000", "#ffffff")).isEqualTo(21);
    }

    @Test
    void everyTextColourStandsOutFromEveryGround() { // 1.4.3
        Set<String> grounds = colours(GROUND);
        assertThat(grounds).hasSizeGreaterThan(2);
        assertThat(colours(TEXT))
                .hasSizeGreaterThan(3)
                .allSatisfy(text -> assertThat(grounds)
                        .allSatisfy(ground -> assertThat(ratio(text, ground))
                                .as(text + " on " + ground)
                                .isGreaterThanOrEqualTo(TEXT_RATIO)));
    }

    @Test
    void everyLineStandsOutFromEveryGround() { // 1.4.11
        Set<String> grounds = colours(GROUND);
        assertThat(colours(LINE))
                .hasSizeGreaterThan(2)
                .allSatisfy(line -> assertThat(grounds)
                        .allSatisfy(ground -> assertThat(ratio(line, ground))
                                .as(line + " on " + ground)
                                .isGreaterThanOrEqualTo(LINE_RATIO)));
    }

    private Set<String> colours(Pattern pattern) {
        Set<String> colours = new TreeSet<>();
        Matcher matcher = pattern.matcher(style);
        while (matcher.find()) {
            String value = matcher.group(1).strip();
            if (value.startsWith("var(--")) {
                value = named.getOrDefault(value.substring(6, value.length() - 1), value);
            }
            if (!value.equals("inherit")) {
                colours.add(value);
            }
        }
        return colours;
    }

    private static double ratio(String one, String other) {
        double brighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (brighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(String colour) {
        assertThat(colour).matches("#[0-9a-f]{6}");
        return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
    }

    private static double channel(String colour, int at) {
        double value = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}

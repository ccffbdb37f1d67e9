package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What reaches a terminal: text, and nothing that it would obey. Control functions are those of ECMA-48. */
class PlainOutputTest {
    private static String printed(String text) {
        ByteArrayOutputStream terminal = new ByteArrayOutputStream();
        try (PrintStream out = new PrintStream(new PlainOutput(terminal), true, StandardCharsets.UTF_8)) {
            out.print(text);
        }
        return terminal.toString(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u001b[2J",
                "\u001b]0;owned\u0007",
                "\u009b2J",
                "\u009d0;owned\u009c",
                "a\bb",
                "\u007f",
                "\u0000"
            })
    void letsNoControlFunctionThrough(String hostile) {
        assertThat(printed("bed " + hostile + " end").codePoints())
                .noneMatch(point -> Character.getType(point) == Character.CONTROL);
        assertThat(printed("bed " + hostile + " end")).startsWith("bed ").endsWith(" end");
    }

    @Test
    void leavesTextAsItIs() {
        String text = "Gemüse ²³ † – 種 🥕 À Â\u00a0€\tcolumn\r\nnext line\n";
        assertThat(printed(text)).isEqualTo(text);
    }
}

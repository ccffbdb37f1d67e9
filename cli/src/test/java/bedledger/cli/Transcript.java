package bedledger.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A conversation with the program, as a text.
 *
 * <pre>
 * %% a remark
 * = sheet.csv              a file beside the book, its lines after a bar
 * | date,did
 * $ bedledger did weather  a command; what it takes on its input after &lt;
 * &lt; a line
 * #7  …                    what it says
 * ! Caution: …             what it says on the error stream
 * [65]                     its exit code, where that is not 0
 * </pre>
 *
 * <p>{@code <folder>} stands for the folder everything lies in; {@code <key>}, {@code <hash>} and {@code <signature>} for what a fresh
 * key makes anew each time.
 */
record Transcript(List<Part> parts) {
    private static final String BASE64_OF_32_BYTES = "[A-Za-z0-9+/]{43}=";
    private static final Pattern KEY = Pattern.compile("[a-z0-9-]+/[0-9a-f]{8}\\+[0-9a-f]{8}\\+[A-Za-z0-9+/]{44}");
    private static final Pattern HASH = Pattern.compile("(?m)^(! )?" + BASE64_OF_32_BYTES + "$");
    private static final Pattern SIGNATURE = Pattern.compile("(?m)^— (\\S+) [A-Za-z0-9+/]{90,}=*$");

    /** A remark, a file or a command with everything that belongs to it; {@code said} is what was put down of the answer. */
    record Part(String head, List<String> input, String said) {
        boolean isCommand() {
            return head.startsWith("$ ");
        }

        boolean isFile() {
            return head.startsWith("= ");
        }
    }

    static Transcript read(List<String> lines) {
        List<Part> parts = new ArrayList<>();
        int at = 0;
        while (at < lines.size()) {
            String head = lines.get(at++);
            List<String> input = new ArrayList<>();
            List<String> said = new ArrayList<>();
            while (at < lines.size() && !lines.get(at).matches("(\\$ |= |%% ).*")) {
                String line = lines.get(at++);
                if (line.startsWith("< ") || line.startsWith("| ")) {
                    input.add(line.substring(2));
                } else {
                    said.add(line);
                }
            }
            parts.add(new Part(head, input, String.join("\n", said).strip()));
        }
        return new Transcript(parts);
    }

    /** Holds the conversation anew and puts it down. */
    String held(Desk desk) {
        StringBuilder text = new StringBuilder();
        for (Part part : parts) {
            text.append(part.head()).append('\n');
            part.input()
                    .forEach(line -> text.append(part.isFile() ? "| " : "< ")
                            .append(line)
                            .append('\n'));
            if (part.isFile()) {
                desk.lay(part.head().substring(2), String.join("\n", part.input()) + "\n");
            } else if (part.isCommand()) {
                String answer = answer(part, desk);
                text.append(answer).append(answer.isEmpty() ? "" : "\n");
            }
            text.append('\n');
        }
        return text.toString().strip() + "\n";
    }

    private static String answer(Part part, Desk desk) {
        String input = part.input().isEmpty() ? "" : String.join("\n", part.input()) + "\n";
        Said said =
                desk.typed(input, part.head().substring("$ bedledger".length()).strip());
        StringBuilder text = new StringBuilder(said.out());
        said.err().lines().forEach(line -> text.append("! ").append(line).append('\n'));
        if (said.exit() != Exit.OK) {
            text.append('[').append(said.exit()).append("]\n");
        }
        return placeholders(text.toString(), desk).strip();
    }

    private static String placeholders(String text, Desk desk) {
        String plain = text.replace(desk.folder().toString(), "<folder>");
        plain = KEY.matcher(plain).replaceAll("<key>");
        plain = HASH.matcher(plain).replaceAll("<hash>");
        return SIGNATURE.matcher(plain).replaceAll("— $1 <signature>");
    }
}

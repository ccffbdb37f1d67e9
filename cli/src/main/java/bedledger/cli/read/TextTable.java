package bedledger.cli.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table as text, never wider than a terminal of 80 columns: the last column takes what is left and breaks between words. */
public final class TextTable {
    private static final int WIDTH = 80;
    private static final int GAP = 2;
    private static final int NARROWEST = 16;
    private final List<String> header;
    private final List<List<String>> rows = new ArrayList<>();

    public TextTable(String... header) {
        this.header = List.of(header);
    }

    public void row(Object... cells) {
        rows.add(Arrays.stream(cells).map(String::valueOf).toList());
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /** The lines, without a line end. */
    public List<String> lines() {
        int[] widths = widths();
        List<String> lines = new ArrayList<>(lines(header, widths));
        lines.add("-".repeat(Math.min(WIDTH, Arrays.stream(widths).sum() + GAP * (widths.length - 1))));
        rows.forEach(row -> lines.addAll(lines(row, widths)));
        return lines;
    }

    private int[] widths() {
        int columns = header.size();
        int[] widths = new int[columns];
        for (int column = 0; column < columns; column++) {
            int c = column;
            widths[column] = java.util.stream.Stream.concat(java.util.stream.Stream.of(header), rows.stream())
                    .mapToInt(row -> row.get(c).length())
                    .max()
                    .orElse(0);
        }
        shrink(widths, longestWords());
        return widths;
    }

    private int[] longestWords() {
        int[] longest = new int[header.size()];
        java.util.stream.Stream.concat(java.util.stream.Stream.of(header), rows.stream())
                .forEach(row -> {
                    for (int column = 0; column < longest.length; column++) {
                        for (String word : row.get(column).split(" ", -1)) {
                            longest[column] = Math.max(longest[column], word.length());
                        }
                    }
                });
        return longest;
    }

    /** Takes from the widest column until the table fits: down to a readable width first, then to whole words, then anyhow. */
    private static void shrink(int[] widths, int[] longestWords) {
        int[] readable = new int[widths.length];
        Arrays.fill(readable, NARROWEST);
        int[] anyhow = new int[widths.length];
        Arrays.fill(anyhow, 1);
        for (int[] least : List.of(readable, longestWords, anyhow)) {
            shrinkTo(least, widths);
        }
    }

    private static void shrinkTo(int[] least, int[] widths) {
        int room = WIDTH - GAP * (widths.length - 1);
        while (Arrays.stream(widths).sum() > room) {
            int widest = -1;
            for (int column = 0; column < widths.length; column++) {
                boolean gives = widths[column] > least[column];
                widest = gives && (widest < 0 || widths[column] >= widths[widest]) ? column : widest;
            }
            if (widest < 0) {
                return;
            }
            widths[widest]--;
        }
    }

    private static List<String> lines(List<String> row, int[] widths) {
        List<List<String>> cells = new ArrayList<>();
        for (int column = 0; column < widths.length; column++) {
            cells.add(wrapped(row.get(column), widths[column]));
        }
        int height = cells.stream().mapToInt(List::size).max().orElse(0);
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < height; line++) {
            StringBuilder text = new StringBuilder();
            for (int column = 0; column < widths.length; column++) {
                List<String> cell = cells.get(column);
                String part = line < cell.size() ? cell.get(line) : "";
                text.append(part).append(" ".repeat(Math.max(0, widths[column] - part.length()) + GAP));
            }
            lines.add(text.toString().stripTrailing());
        }
        return lines;
    }

    /** Breaks a text between words; a word longer than the width is cut. */
    public static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String whole : text.replaceAll("\\R", " ").split(" ", -1)) {
            String word = whole;
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (word.length() > width) {
                lines.add(word.substring(0, width));
                word = word.substring(width);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}

package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** Prints what a reading command found, in the form that was asked for. */
public final class Output {
    private static final JsonMapper JSON = JsonMapper.builder()
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.NON_NULL))
            .build();
    private static final int BUFFER = 64 * 1024;
    /** What a spreadsheet would take for a formula. */
    private static final Pattern FORMULA = Pattern.compile("[=+@\\t\\r].*|-[^0-9.].*", Pattern.DOTALL);

    /** A table for CSV: a header and rows. */
    public record Table(List<String> header, List<List<String>> rows) {}

    private final Surroundings around;
    private final ReadOptions options;

    public Output(Surroundings around, ReadOptions options) {
        this.around = around;
        this.options = options;
    }

    /**
     * Prints.
     *
     * @param view a record of plain values, printed as it is for JSON
     * @param table the same as a table
     * @param text prints the same for people
     */
    public int print(Object view, Table table, Consumer<Surroundings> text) {
        if (options.json && options.csv) {
            throw new Failure(Exit.USAGE, "Give --json or --csv, not both.");
        }
        if (options.json) {
            printJson(view);
        } else if (options.csv) {
            printCsv(table);
        } else {
            text.accept(around);
        }
        return Exit.OK;
    }

    /** Written as it is made: the answer of a long book is longer than what may be held. */
    private void printJson(Object view) {
        Writer out = toTheStream();
        try {
            // A lone half of a character comes out as the stream's encoder makes it, so the generator is handed a
            // writer.
            JSON.writerWithDefaultPrettyPrinter()
                    .without(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                    .writeValue(out, view);
            out.flush();
        } catch (IOException impossible) {
            throw new UncheckedIOException(view.getClass().getName(), impossible);
        }
        around.out().println();
    }

    private void printCsv(Table table) {
        Writer out = toTheStream();
        try {
            write(table, out);
            out.flush();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private Writer toTheStream() {
        return new BufferedWriter(new OutputStreamWriter(around.out(), StandardCharsets.UTF_8), BUFFER);
    }

    /** A record of plain values as JSON. */
    public static String json(Object view) {
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(view);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(view.getClass().getName(), impossible);
        }
    }

    /** The table as CSV, RFC 4180, with nothing in it that a spreadsheet would run. */
    public static String csv(Table table) {
        StringWriter text = new StringWriter();
        try {
            write(table, text);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static void write(Table table, Writer out) throws IOException {
        // Not closed: the stream beneath is the caller's.
        CsvWriter csv = CsvWriter.builder()
                .lineDelimiter(de.siegmar.fastcsv.writer.LineDelimiter.CRLF)
                .build(out);
        csv.writeRecord(table.header());
        table.rows()
                .forEach(row ->
                        csv.writeRecord(row.stream().map(Output::harmless).toList()));
        csv.flush();
    }

    /** A text that a spreadsheet would run as a formula gets an apostrophe before it; numbers stay as they are. */
    private static String harmless(String cell) {
        return FORMULA.matcher(cell).matches() ? "'" + cell : cell;
    }
}

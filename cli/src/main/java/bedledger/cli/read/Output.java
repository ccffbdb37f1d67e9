package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** Prints what a reading command found, in the form that was asked for. */
public final class Output {
    private static final JsonMapper JSON = JsonMapper.builder()
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.NON_NULL))
            .build();
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
            around.out().println(json(view));
        } else if (options.csv) {
            around.out().print(csv(table));
        } else {
            text.accept(around);
        }
        return Exit.OK;
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
        try (CsvWriter csv = CsvWriter.builder()
                .lineDelimiter(de.siegmar.fastcsv.writer.LineDelimiter.CRLF)
                .build(text)) {
            csv.writeRecord(table.header());
            table.rows()
                    .forEach(row ->
                            csv.writeRecord(row.stream().map(Output::harmless).toList()));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    /** A text that a spreadsheet would run as a formula gets an apostrophe before it; numbers stay as they are. */
    private static String harmless(String cell) {
        return FORMULA.matcher(cell).matches() ? "'" + cell : cell;
    }
}

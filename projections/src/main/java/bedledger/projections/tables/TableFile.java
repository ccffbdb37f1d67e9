package bedledger.projections.tables;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** One CSV resource of this package at one edition, read row by row; a row that cannot be is named by file and line. */
public record TableFile(String table, String edition) {
    String fileName() {
        return table + "-" + edition + ".csv";
    }

    /** Every row, in the order of the file. */
    public <T> List<T> rows(Function<Row, T> reading) {
        try (InputStream in = TableFile.class.getResourceAsStream(fileName())) {
            if (in == null) {
                throw new IllegalStateException("The table " + fileName() + " is not in this program.");
            }
            try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(in)) {
                return csv.stream().map(each -> read(each, reading)).toList();
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private <T> T read(NamedCsvRecord csv, Function<Row, T> reading) {
        try {
            return reading.apply(new Row(this, csv));
        } catch (RuntimeException wrong) {
            throw new IllegalStateException(
                    fileName() + ", line " + csv.getStartingLineNumber() + ": " + wrong.getMessage(), wrong);
        }
    }

    /** One row; columns by name. */
    public record Row(TableFile file, NamedCsvRecord csv) {
        /** Without the blanks around it. */
        public String text(String column) {
            return csv.getField(column).strip();
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        public List<String> list(String column) {
            String text = text(column);
            return text.isEmpty() ? List.of() : List.of(text.split(";", -1));
        }

        /** Null where both ends are empty. */
        public @Nullable Range range() {
            if (text("low").isEmpty() != text("high").isEmpty()) {
                throw new IllegalArgumentException("a range has both ends or none");
            }
            return text("low").isEmpty() ? null : new Range(number("low"), number("high"));
        }

        public Citation citation() {
            return new Citation(file.table(), file.edition(), text("source"), Status.parse(text("status")));
        }
    }
}

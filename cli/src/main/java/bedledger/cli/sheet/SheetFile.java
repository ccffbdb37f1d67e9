package bedledger.cli.sheet;

import bedledger.cli.Bedledger;
import bedledger.cli.Exit;
import bedledger.cli.Failure;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A sheet as it stands in the file.
 *
 * @param header the first row, as written
 * @param rows the other rows, empty ones left out
 */
record SheetFile(List<String> header, List<Row> rows) {
    /** One row: its number as a spreadsheet shows it (the header is row 1), the line of the file it begins on, its cells. */
    record Row(int number, long line, List<String> cells) {}

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    /** A row put after the last: where a quote is left open it is swallowed, and that is how it shows. */
    private static final String END = "\u0003";

    /** Reads a sheet; {@code shown} is the file as it was typed. */
    static SheetFile read(Path file, Path shown, char separator) {
        String text = text(file, shown);
        List<String> header = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(separator)
                .skipEmptyLines(false)
                .allowMissingFields(true)
                .allowExtraFields(true)
                .allowExtraCharsAfterClosingQuote(false)
                .ofCsvRecord(text + "\n" + END)) {
            int number = 0;
            for (CsvRecord record : csv) {
                number++;
                requireClosed(record, shown);
                if (number == 1) {
                    header.addAll(record.getFields());
                } else if (record.getFields().stream().anyMatch(cell -> !cell.isBlank() && !cell.equals(END))) {
                    rows.add(new Row(number, record.getStartingLineNumber(), record.getFields()));
                }
            }
        } catch (CsvParseException malformed) {
            throw refused(
                    shown,
                    "it is not well-formed CSV: " + reason(malformed),
                    "Look there for a quote mark inside a cell: write it twice, and the whole cell in quotes");
        } catch (IOException failed) {
            throw Bedledger.unreadable(shown, failed);
        }
        if (rows.isEmpty()) {
            throw refused(shown, "it holds no rows", "The first row names the columns: date,did,beds,…");
        }
        return new SheetFile(List.copyOf(header), List.copyOf(rows));
    }

    private static void requireClosed(CsvRecord record, Path shown) {
        List<String> cells = record.getFields();
        String last = cells.get(cells.size() - 1);
        if (last.endsWith(END) && !cells.equals(List.of(END))) {
            throw refused(
                    shown,
                    "a quote that opens in the row of line " + record.getStartingLineNumber() + " is not closed",
                    "Close it, or leave it out");
        }
    }

    /** The line and the reason, without the library's own words around them. */
    private static String reason(CsvParseException malformed) {
        String where = String.valueOf(malformed.getMessage()).replaceFirst("^.*started in ", "in the row of ");
        Throwable cause = malformed.getCause();
        return cause == null ? where : where + ", " + cause.getMessage();
    }

    private static String text(Path file, Path shown) {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (NoSuchFileException missing) {
            throw new Failure(Exit.NO_INPUT, "There is no file '" + shown + "'. Check the path.");
        } catch (IOException failed) {
            throw Bedledger.unreadable(shown, failed);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        } catch (CharacterCodingException notUtf8) {
            throw refused(
                    shown,
                    "it is not written in UTF-8 (line " + line(bytes) + ")",
                    "Save it from the spreadsheet as 'CSV UTF-8', then import it again");
        }
    }

    /** The line on which the first byte stands that is no UTF-8. */
    private static int line(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .decode(in, java.nio.CharBuffer.allocate(bytes.length + 1), true);
        int line = 1;
        for (int at = 0; at < in.position(); at++) {
            line += bytes[at] == '\n' ? 1 : 0;
        }
        return line;
    }

    /** The whole sheet is refused, for several reasons. */
    static Failure refused(Path file, List<String> why, String wayOut) {
        return new Failure(
                Exit.REFUSED,
                "The sheet '" + file + "' was refused; nothing was written.\n  " + String.join("\n  ", why) + "\n"
                        + wayOut + ".");
    }

    static Failure refused(Path file, String why, String wayOut) {
        return new Failure(
                Exit.REFUSED,
                "The sheet '" + file + "' was refused: " + why + ". Nothing was written. " + wayOut + ".");
    }
}

package bedledger.projections.tables;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SourceSheetTest {
    private static final Set<String> STATUSES = Set.of("confirmed", "memory", "judgement");

    static List<Path> tables() throws IOException, URISyntaxException {
        URL folder = Objects.requireNonNull(Tables.class.getResource("crops-2026.csv"));
        try (Stream<Path> files =
                Files.list(Objects.requireNonNull(Path.of(folder.toURI()).getParent()))) {
            return files.filter(each -> each.toString().endsWith(".csv"))
                    .sorted()
                    .toList();
        }
    }

    static List<Path> tablesWithSources() throws IOException, URISyntaxException {
        return tables().stream()
                .filter(each -> !named(each).startsWith("sources-"))
                .toList();
    }

    @Test
    void findsTheTables() throws Exception {
        assertThat(tables()).hasSizeGreaterThanOrEqualTo(9);
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyTableHasItsSheet(Path table) throws IOException {
        String sheet = Files.readString(sheetOf(table), UTF_8);
        assertThat(sheet).contains(named(table));
        for (String column : rows(table).get(0).getHeader()) {
            assertThat(sheet).contains("`" + column + "`");
        }
    }

    @ParameterizedTest
    @MethodSource("tablesWithSources")
    void everyRowHasAStatusAndASourceThatTheSheetExplains(Path table) throws Exception {
        String sheet = Files.readString(sheetOf(table), UTF_8);
        Set<String> known = rows(tables().stream()
                        .filter(each -> named(each).equals("sources-2026.csv"))
                        .findFirst()
                        .orElseThrow())
                .stream()
                .map(each -> each.getField("source"))
                .collect(Collectors.toSet());
        assertThat(rows(table)).isNotEmpty().allSatisfy(row -> {
            assertThat(row.getField("status")).isIn(STATUSES);
            assertThat(row.getField("source")).isIn(known);
            assertThat(sheet).contains("`" + row.getField("source") + "`");
        });
    }

    @ParameterizedTest
    @MethodSource("tablesWithSources")
    void everyRangeHoldsItsValueAndIsMoreThanOneNumber(Path table) throws IOException {
        for (NamedCsvRecord row : rows(table)) {
            if (!row.getHeader().contains("low") || row.getField("low").isEmpty()) {
                continue;
            }
            double low = Double.parseDouble(row.getField("low"));
            double high = Double.parseDouble(row.getField("high"));
            assertThat(low).as(row.toString()).isLessThan(high);
            assertThat(Double.parseDouble(row.getField("value")))
                    .as(row.toString())
                    .isBetween(low, high);
        }
    }

    @Test
    void memoryIsNeverCalledConfirmed() throws Exception {
        for (Path table : tablesWithSources()) {
            assertThat(rows(table))
                    .filteredOn(row -> row.getField("source").equals("memory")
                            || row.getField("source").equals("judgement"))
                    .noneMatch(row -> row.getField("status").equals("confirmed"));
        }
    }

    private static List<NamedCsvRecord> rows(Path table) throws IOException {
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(table)) {
            return csv.stream().toList();
        }
    }

    private static Path sheetOf(Path table) {
        return table.resolveSibling(named(table).replace(".csv", ".sources.md"));
    }

    private static String named(Path table) {
        return Objects.requireNonNull(table.getFileName()).toString();
    }
}

package bedledger.cli.outside;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * Against the ICASA data dictionary (DSSAT/ICASA-Dictionary, commit 2168f366, 2026-01-29): names, codes and units as it has them; the
 * figures are worked by hand from the season of the test.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OperationsTest {
    private List<NamedCsvRecord> rows = List.of();

    @BeforeAll
    void handOut(@TempDir Path folder) {
        rows = CsvReader.builder().ofNamedCsvRecord(Handed.season(folder).export("operations")).stream()
                .toList();
    }

    private NamedCsvRecord row(String act, String bed) {
        return rows.stream()
                .filter(row ->
                        row.getField("act").equals(act) && row.getField("bed").equals(bed))
                .findFirst()
                .orElseThrow();
    }

    /** 300 plants on two beds of 20 m × 0.75 m: 150 on 15 m². */
    @Test
    void plantsStandInNumbersOnASquareMetre() {
        NamedCsvRecord row = row("transplant", "N3");
        assertThat(row.getField("MGMT_EVENT")).isEqualTo("planting");
        assertThat(row.getField("CRID")).isEqualTo("LET");
        assertThat(row.getField("PLMA")).isEqualTo("T");
        assertThat(row.getField("PLPOP")).isEqualTo("10");
        assertThat(row.getField("shared_by_area")).isEqualTo("yes");
    }

    /** 60 kg on 30 m², fresh: 20,000 kg/ha; RE003 is barnyard manure. */
    @Test
    void manureStandsFreshInKilogramsOnAHectare() {
        NamedCsvRecord row = row("spread", "N2");
        assertThat(row.getField("MGMT_EVENT")).isEqualTo("organic_material");
        assertThat(row.getField("OMCD")).isEqualTo("RE003");
        assertThat(row.getField("OMFWT")).isEqualTo("20000");
        assertThat(row.getField("OMH2O")).isEmpty();
    }

    /** TI015 is the tine harrow; a power harrow has no code. */
    @Test
    void anImplementWithoutACodeStandsInWords() {
        assertThat(row("harrow", "N3").getField("TIIMP")).isEqualTo("TI015");
        assertThat(row("harrow", "N3").getField("TIDEP")).isEqualTo("5");
        assertThat(row("incorporate", "N1").getField("TIIMP")).isEmpty();
        assertThat(row("incorporate", "N1").getField("TIO_COMMENT")).isEqualTo("power harrow");
    }

    @Test
    void whatWasCountedHasNoWeightAndWhatWasCorrectedCountsOnce() {
        assertThat(row("harvest", "N3").getField("harvest_kg_fresh")).isEmpty();
        assertThat(row("harvest", "N3").getField("harvest_as_recorded")).isEqualTo("250 heads");
        assertThat(rows.stream()
                        .filter(row -> row.getField("lot").equals("2025/CAR-A"))
                        .map(row -> row.getField("harvest_kg_fresh")))
                .containsExactly("46", "46");
        assertThat(row("mulch", "N1").getField("MLTP")).isEqualTo("MT007");
    }
}

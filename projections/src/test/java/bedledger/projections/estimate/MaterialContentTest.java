package bedledger.projections.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.tables.Tables;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MaterialContentTest {
    private static final Tables TABLES = Tables.bundled();

    @Test
    void aTonneOfHorseManureAtTheTablesDryShare() {
        MaterialContent content = MaterialContent.of("stable manure", 1000, Optional.empty(), TABLES);
        assertThat(content.dry().orElseThrow().best()).isCloseTo(250, within(1e-9));
        assertThat(content.nitrogen().orElseThrow().best()).isCloseTo(5.0, within(1e-9));
        assertThat(content.phosphorus().orElseThrow().best()).isCloseTo(5.0 * 0.436, within(1e-9));
        assertThat(content.missing()).isEmpty();
    }

    @Test
    void theTablesDryShareCancelsWhereTheContentIsGivenPerTonneFresh() {
        Estimate nitrogen = MaterialContent.of("horse manure", 1000, Optional.empty(), TABLES)
                .nitrogen()
                .orElseThrow();
        assertThat(nitrogen.deviations()).containsOnlyKeys("horse manure nitrogen per tonne fresh");
    }

    @Test
    void aWetterManureBringsLess() {
        MaterialContent wet = MaterialContent.of("horse manure", 1000, Optional.of(new DryShare(0.20)), TABLES);
        assertThat(wet.nitrogen().orElseThrow().best()).isCloseTo(4.0, within(1e-9));
    }

    @Test
    void whatTheTablesLackIsNamedNotGuessed() {
        MaterialContent compost = MaterialContent.of("compost", 100, Optional.empty(), TABLES);
        assertThat(compost.carbon().orElseThrow().best()).isCloseTo(51 * 0.243, within(1e-9));
        assertThat(compost.missing()).containsExactly("compost phosphorus");
        assertThat(MaterialContent.of("moon dust", 100, Optional.empty(), TABLES)
                        .missing())
                .hasSize(4);
    }
}

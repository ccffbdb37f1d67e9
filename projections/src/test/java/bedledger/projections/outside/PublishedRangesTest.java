package bedledger.projections.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.Residue;
import bedledger.projections.estimate.ResidueEstimates;
import bedledger.projections.tables.Tables;
import org.junit.jupiter.api.Test;

/** Nitrogen in residue as others measured it, against the tables; a band that misses it would be too narrow. */
class PublishedRangesTest {
    private static final ResidueEstimates RESIDUE = new ResidueEstimates(Tables.bundled());

    private static Estimate nitrogen(String crop, double tonnesPerHectare) {
        Residue residue = RESIDUE.fromYield(crop, tonnesPerHectare * 1000);
        return residue.nitrogen().orElseThrow();
    }

    /** Cauliflower 30.6 t/ha: 95 to 140 kg N/ha (Everaarts 2000, c.coek.info); 130 (oekolandbau.de). */
    @Test
    void cauliflower() {
        Estimate ours = nitrogen("cauliflower", 30.6);
        assertThat(ours.best()).isCloseTo(140, within(1.0));
        assertThat(ours.low()).isLessThan(95);
    }

    /** Lettuce 45.5 t/ha: about 25 kg N/ha (oekolandbau.de). The table is 2.5 times as high; only the low end comes near. */
    @Test
    void lettuceIsHighAndItsLowEndComesNear() {
        Estimate ours = nitrogen("lettuce", 45.5);
        assertThat(ours.best()).isCloseTo(63, within(1.0));
        assertThat(ours.low()).isLessThan(30);
    }

    /**
     * Broccoli 5 US tons an acre: 145 lb N an acre, 163 kg/ha (nevegetable.org, removal table 4). Ton of 2000 lb, acre of
     * 0.40468564224 ha.
     */
    @Test
    void broccoli() {
        double tonnesPerHectare = 5 * 2000 * Tables.sampling().kilogramsInAPound() / 1000 / 0.40468564224;
        Estimate ours = nitrogen("broccoli", tonnesPerHectare);
        assertThat(ours.best()).isCloseTo(152, within(1.0));
        assertThat(ours.high()).isGreaterThanOrEqualTo(163);
    }
}

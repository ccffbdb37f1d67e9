package bedledger.projections.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.HarvestIndexForm;
import bedledger.projections.estimate.IpccResidue;
import bedledger.projections.tables.IpccClass2006;
import bedledger.projections.tables.IpccClass2019;
import bedledger.projections.tables.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResidueFormulaTest {
    /**
     * AHDB RB209 (2021), Section 6, Table 6.27 (p. 42) with the formula of p. 41: yield t/ha, % dry, harvest index, %N of the
     * whole plant, and the printed total dry matter t/ha and N uptake kg/ha. Read in a third-party Markdown copy. The table
     * rounds its inputs: dry matter is met to 1.2 %, nitrogen to that and the half unit %N is rounded by. The row "Head cabbage - post-31
     * December" is left out: it prints 203 where the formula gives 270.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "cauliflower summer, 30.6, 8.2, 0.37, 3.8, 6.8, 259",
        "lettuce crisp, 45.5, 5.3, 0.50, 3.4, 4.8, 165",
        "leeks, 47.0, 14.2, 0.57, 2.4, 11.8, 279",
        "bulb onions spring, 60.5, 12.7, 0.81, 1.6, 9.4, 147",
        "white cabbage storage, 110.0, 8.6, 0.65, 2.6, 14.6, 378",
        "calabrese, 16.3, 10.4, 0.17, 2.3, 10.0, 226"
    })
    void harvestIndexFormMeetsRb209(
            String crop, double fresh, double dry, double index, double nitrogen, double printed, double uptake) {
        Estimate whole = HarvestIndexForm.wholeCrop(exact(fresh), exact(dry / 100), exact(index));
        assertThat(whole.best()).isCloseTo(printed, within(0.012 * printed));
        assertThat(whole.best() * nitrogen * 10).isCloseTo(uptake, within((0.012 + 0.05 / nitrogen) * uptake));
    }

    /** The same table; residue = whole crop x (1 - harvest index), computed from its printed inputs. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "cauliflower, 30.6, 8.2, 0.37, 6.78, 4.27",
        "lettuce, 45.5, 5.3, 0.50, 4.82, 2.41",
        "carrots, 150.0, 11.4, 0.81, 21.11, 4.01"
    })
    void residueIsTheRestOfTheCrop(String crop, double fresh, double dry, double index, double whole, double residue) {
        Estimate all = HarvestIndexForm.wholeCrop(exact(fresh), exact(dry / 100), exact(index));
        assertThat(all.best()).isCloseTo(whole, within(0.005));
        assertThat(HarvestIndexForm.residue(all, exact(index)).best()).isCloseTo(residue, within(0.005));
    }

    /**
     * AHDB RB209 (2021), Section 6, p. 41: %N = a(1 + b exp(-0.26 W)), with a, b and W as printed, and the %N that Table 6.27
     * prints to one decimal. Read in a third-party Markdown copy.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"brussels sprouts, 13.3, 2.8", "cauliflower, 6.8, 3.8", "carrots, 21.2, 0.8"})
    void criticalNitrogenMeetsRb209(String crop, double dryTonnes, double printed) {
        assertThat(Tables.bundled().criticalNitrogen(crop).orElseThrow().percent(dryTonnes))
                .isCloseTo(printed, within(0.05));
    }

    /**
     * IPCC 2006 Guidelines Vol. 4 Ch. 11 Eq. 11.6 and 11.7A with Table 11.2, computed from coefficients seen in two
     * published files; the IPCC page itself was not reached.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"Potato, 30, 6.60, 1.720, 1.664, 55.98", "Beans & pulses, 2.5, 2.275, 3.421, 1.082, 36.02"})
    void ipcc2006(String name, double fresh, double dry, double above, double below, double nitrogen) {
        IpccClass2006 row = Tables.ipcc2006().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        check(IpccResidue.by2006(row, fresh), dry, above, below, nitrogen);
    }

    /** IPCC 2019 Refinement Vol. 4 Ch. 11 Eq. 11.6 with Table 11.1A; the residue ratios are from memory. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Potatoes and tubers, 30, 6.60, 2.640, 1.848, 76.03",
        "Beans and pulses, 2.5, 2.275, 4.778, 1.340, 48.94"
    })
    void ipcc2019(String name, double fresh, double dry, double above, double below, double nitrogen) {
        IpccClass2019 row = Tables.ipcc2019().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        check(IpccResidue.by2019(row, fresh).orElseThrow(), dry, above, below, nitrogen);
    }

    /** The intercept of the 2006 form would leave residue where nothing grew. */
    @Test
    void ipcc2006LeavesNothingWhereNothingGrew() {
        assertThat(Tables.ipcc2006())
                .allSatisfy(
                        row -> assertThat(IpccResidue.by2006(row, 0).above()).isZero());
    }

    private static void check(IpccResidue got, double dry, double above, double below, double nitrogen) {
        assertThat(got.cropDry()).isCloseTo(dry, within(0.001));
        assertThat(got.above()).isCloseTo(above, within(0.001));
        assertThat(got.below().orElseThrow()).isCloseTo(below, within(0.001));
        assertThat(got.nitrogen().orElseThrow()).isCloseTo(nitrogen, within(0.01));
    }

    private static Estimate exact(double value) {
        return Estimate.exact(value, "");
    }
}

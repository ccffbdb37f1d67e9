package bedledger.projections.outside.law;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Outcome;
import bedledger.projections.findings.PaperRecord;
import bedledger.projections.findings.Reading;
import bedledger.projections.findings.RuleBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Cases derived from Regulation (EU) 2018/848 Annex II Part I, 1.7.1 (conversion) and 1.9.4 (170 kg of nitrogen per year and hectare of
 * agricultural area used). The points are from memory; two years, three years, 170 kg and the holding as the basis were read in the rule
 * before it, 2092/91 Annex I.
 */
class EuropeTest {
    /** 1.20 ha: the limit is 204 kg. */
    private static PaperRecord holding(String... lines) {
        return PaperRecord.empty()
                .by(RuleBook.eu())
                .write(
                        "2025-01-01 register-field Home --gross 1.20ha",
                        "2025-01-01 lay-out H1 H2 --field Home --length 30m --width 0.75m")
                .write(lines);
    }

    private static final String CATTLE = "2026-03-10 spread H1 --manure cattle --quantity 20t --nitrogen 0.6%";
    private static final String POULTRY = "2026-03-11 spread H1 --manure poultry --quantity 5t --nitrogen 1.5%";

    private static Finding nitrogen(PaperRecord record) {
        return record.theFindingOf("livestock-nitrogen");
    }

    /** X40: 20 t at 6 kg N/t and 5 t at 15 kg N/t are 195 kg. */
    @Test
    void x40AddsUpOverTheHolding() {
        Finding finding = nitrogen(holding(CATTLE, POULTRY));

        assertThat(finding.outcome()).isEqualTo(Outcome.MET);
        assertThat(finding.arithmetic()).isEqualTo("195 kg N / 1.2 ha = 162.5 kg/ha, 170 at most");
    }

    /** X42: 30 t of compost of plants only change nothing. */
    @Test
    void x42PlantCompostDoesNotCount() {
        Finding finding = nitrogen(holding(
                CATTLE,
                POULTRY,
                "2026-01-10 build-pile G1 --ingredients leaves --ingredients grass",
                "2026-04-01 spread H2 --pile G1 --quantity 30t --nitrogen 0.7%"));

        assertThat(finding.outcome()).isEqualTo(Outcome.MET);
        assertThat(finding.arithmetic()).startsWith("195 kg N");
    }

    /** X43: 0.6 kg on a bed of 30 m by 0.75 m are 266.7 kg/ha there, and no breach. */
    @Test
    void x43OneBedMayHaveMore() {
        Finding finding = nitrogen(holding("2026-03-10 spread H1 --manure cattle --quantity 100kg --nitrogen 0.6%"));

        assertThat(finding.outcome()).isEqualTo(Outcome.MET);
        assertThat(finding.sentence()).contains("266.7 kg/ha on H1").contains("not on a bed");
    }

    /** X44: exactly 204 kg do not exceed it; a kilogram of manure more does. */
    @ParameterizedTest(name = "{0} at 0.6 % N: {1}")
    @CsvSource({"34t, MET", "34001kg, NOT_MET"})
    void x44TheLimitItselfIsWithin(String quantity, Outcome outcome) {
        assertThat(nitrogen(holding("2026-03-10 spread H1 --manure cattle --quantity " + quantity + " --nitrogen 0.6%"))
                        .outcome())
                .isEqualTo(outcome);
    }

    /** Not in the text: a year counts for itself. */
    @Test
    void eachYearIsCountedForItself() {
        assertThat(holding(CATTLE, "2027-03-10 spread H1 --manure cattle --quantity 20t --nitrogen 0.6%")
                        .findingsOf("livestock-nitrogen"))
                .extracting(Finding::arithmetic)
                .containsExactly(
                        "120 kg N / 1.2 ha = 100 kg/ha, 170 at most", "120 kg N / 1.2 ha = 100 kg/ha, 170 at most");
    }

    @Test
    void withoutWeightNothingIsMet() {
        Finding finding = nitrogen(holding(CATTLE, "2026-03-12 spread H2 --manure cattle --quantity 2m3"));

        assertThat(finding.outcome()).isEqualTo(Outcome.INCOMPLETE);
        assertThat(finding.sentence()).contains("its weight is not recorded");
    }

    /** Whether a pile holds anything from animals is not recorded: between none and all of its 240 kg. */
    @Test
    void aRangeThatReachesAcrossTheLimitIsAQuestion() {
        Finding finding = nitrogen(holding(
                "2026-01-10 build-pile P1 --ingredients \"kitchen mix\"",
                "2026-04-01 spread H2 --pile P1 --quantity 40t --nitrogen 0.6%"));

        assertThat(finding.outcome()).isEqualTo(Outcome.ASK);
        assertThat(finding.arithmetic()).contains("(0 to 200 kg/ha)".replace(" kg/ha", ""));
    }

    /** RB209 gives 6 kg N/t for cattle manure and no range; which value counts is for the control body. */
    @Test
    void aTableValueWithoutARangeIsAQuestionUnlessASettingTakesIt() {
        PaperRecord record = holding("2026-03-10 spread H1 --manure cattle --quantity 20t");

        assertThat(nitrogen(record).outcome()).isEqualTo(Outcome.ASK);
        assertThat(nitrogen(record).arithmetic()).startsWith("120 kg N");
        assertThat(nitrogen(record.reading(Reading.TABLE_NITROGEN_COUNTS, true)).outcome())
                .isEqualTo(Outcome.MET);
    }

    /** X51: conversion since 2025-03-01. */
    @ParameterizedTest(name = "X51: sown {0}: {1}")
    @CsvSource({"2027-02-20, NOT_MET", "2027-02-28, NOT_MET", "2027-03-01, MET"})
    void x51AnnualsAreSownTwoYearsAfterConversionBegan(String sown, Outcome outcome) {
        Finding finding = holding(
                        "2025-03-01 declare-land Home --none-since 2025-03-01 --evidence \"control body's letter\"",
                        sown + " sow H1 --crop carrot",
                        "2027-07-01 harvest H1 --crop carrot --quantity 9kg --lot 2027/CAR-1")
                .theFindingOf("conversion");

        assertThat(finding.outcome()).isEqualTo(outcome);
        assertThat(finding.arithmetic()).startsWith("2025-03-01 + 24 months = 2027-03-01");
    }

    /** 1.7.1: three years before the harvest of perennials, however long they stand. */
    @ParameterizedTest(name = "asparagus cut {0}: {1}")
    @CsvSource({"2028-02-28, NOT_MET", "2028-03-01, MET"})
    void perennialsAreHarvestedThreeYearsAfter(String cut, Outcome outcome) {
        assertThat(holding(
                                "2025-03-01 declare-land Home --none-since 2025-03-01 --evidence letter",
                                "2025-03-10 transplant H1 --crop asparagus --origin own",
                                cut + " harvest H1 --crop asparagus --quantity 9kg --lot 2028/ASP-1")
                        .theFindingOf("conversion")
                        .outcome())
                .isEqualTo(outcome);
    }

    /** Article 10(3): an earlier period counts only as recognised; here the setting says that it is not. */
    @Test
    void anEarlierPeriodCountsOnlyAsFarAsItIsRecognised() {
        PaperRecord record = holding(
                "2025-03-01 declare-land Home --none-since 2015-01-01 --evidence letter",
                "2026-04-01 sow H1 --crop carrot",
                "2026-07-01 harvest H1 --crop carrot --quantity 9kg --lot 2026/CAR-1");

        assertThat(record.theFindingOf("conversion").outcome()).isEqualTo(Outcome.MET);
        assertThat(record.reading(Reading.DECLARED_SINCE_COUNTS_AS_CONVERSION, false)
                        .theFindingOf("conversion")
                        .outcome())
                .isEqualTo(Outcome.NOT_MET);
    }

    /** Work of before 2022-01-01 fell under 834/2007. */
    @Test
    void workBeforeTheRegulationIsNotJudgedByIt() {
        assertThat(PaperRecord.empty()
                        .by(RuleBook.eu())
                        .write(
                                "2020-01-01 register-field Home --gross 1ha",
                                "2020-01-01 lay-out H1 --field Home --length 30m --width 0.75m",
                                "2021-03-10 spread H1 --manure cattle --quantity 90t --nitrogen 0.6%")
                        .findingsOf("livestock-nitrogen"))
                .isEmpty();
    }
}

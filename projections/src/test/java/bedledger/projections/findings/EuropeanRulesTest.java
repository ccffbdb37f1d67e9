package bedledger.projections.findings;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.LotId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EuropeanRulesTest {
    private static PaperRecord record(String... lines) {
        return PaperRecord.of(lines).by(RuleBook.eu());
    }

    private static Outcome of(String rule, String... lines) {
        return record(lines).theFindingOf(rule).outcome();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "'', INCOMPLETE",
        "--source \"own mare\", MET",
        "--source \"organic dairy next door\", MET",
        "--source \"dairy next door\", ASK",
        "--source \"caged hens\", NOT_MET"
    })
    void manureFromFactoryFarmingIsOutAndAnUnknownStableAQuestion(String source, Outcome outcome) {
        assertThat(of("manure-origin", "2026-04-01 spread N1 --manure hen --quantity 100kg " + source))
                .isEqualTo(outcome);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "--organic yes, INCOMPLETE",
        "--organic yes --certificate C-1, MET",
        "--organic no --treatment untreated, INCOMPLETE",
        "--organic no --treatment untreated --search \"database: none of the variety\", ASK",
        "--organic no --treatment untreated --search \"database: none; authorised 2026-02-01\", MET",
        "--organic no --treatment other-treatment --search \"authorised\", NOT_MET",
        "--organic no --form seedlings --search \"database: none; authorised\", NOT_MET",
        "'', INCOMPLETE"
    })
    void seedIsOrganicOrThereIsLeave(String said, Outcome outcome) {
        assertThat(of("seed", "2026-03-01 receive-seed S-1 --crop kale --quantity 9g " + said))
                .isEqualTo(outcome);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "--target worms --tried-first net, MET",
        "--target worms, INCOMPLETE",
        "--tried-first net, INCOMPLETE",
        "--target worms --tried-first none, NOT_MET"
    })
    void aSprayShowsItsNeed(String said, Outcome outcome) {
        assertThat(of("plant-protection", "2026-06-01 spray N1 --product \"Bt wettable powder\" " + said))
                .isEqualTo(outcome);
    }

    @Test
    void theWorstSprayOfASeasonIsTold() {
        Finding finding = record(
                        "2026-06-01 spray N1 --product \"Bt wettable powder\" --target worms --tried-first net",
                        "2026-07-01 spray N2 --product \"Bt wettable powder\" --target worms")
                .theFindingOf("plant-protection");

        assertThat(finding.outcome()).isEqualTo(Outcome.INCOMPLETE);
        assertThat(finding.entries()).containsExactly(4L);
    }

    @Test
    void oneSeasonShowsNoRotationAndTwoAreAQuestion() {
        PaperRecord record = record("2025-04-01 sow N1 --crop carrot", "2025-08-01 finish N1 --crop carrot");

        assertThat(record.findingsOf("legumes")).isEmpty();
        record.write("2026-04-01 sow N1 --crop kale");
        assertThat(record.theFindingOf("legumes").outcome()).isEqualTo(Outcome.ASK);
        record.write("2026-08-01 finish N1 --crop kale", "2026-08-02 sow N2 --crop \"pole bean\"");
        assertThat(record.theFindingOf("legumes").outcome()).isEqualTo(Outcome.MET);
    }

    @Test
    void aCropOfUnknownFamilyMayBeALegume() {
        assertThat(of(
                        "legumes",
                        "2024-04-01 sow N1 --crop oca",
                        "2024-08-01 finish N1 --crop oca",
                        "2026-04-01 sow N1 --crop kale"))
                .isEqualTo(Outcome.INCOMPLETE);
    }

    @Test
    void mineralNitrogenNamesTheLotsPickedAfterIt() {
        Finding finding = record(
                        "2026-05-01 spread N1 --material \"Urea 46-0-0\" --per-bed 1kg",
                        "2026-06-01 harvest N1 --crop kale --quantity 4kg --lot 2026/KAL-1")
                .theFindingOf("prohibited-input");

        assertThat(finding.citation()).contains("1.9.8");
        assertThat(finding.lots()).containsExactly(LotId.parse("2026/KAL-1"));
    }

    @Test
    void nothingOfTheOtherBookIsCited() {
        assertThat(RuleBook.eu().rules())
                .allSatisfy(rule -> assertThat(rule.sheet().citation()).doesNotContain("CFR"));
        assertThat(RuleBook.us().rules())
                .allSatisfy(rule -> assertThat(rule.sheet().citation()).doesNotContain("2018/848"));
    }

    @Test
    void aBookIsFoundByItsName() {
        assertThat(RuleBook.of("eu")).map(RuleBook::id).contains("eu");
        assertThat(RuleBook.of("us")).map(RuleBook::id).contains("us");
        assertThat(RuleBook.of("uk")).isEmpty();
    }
}

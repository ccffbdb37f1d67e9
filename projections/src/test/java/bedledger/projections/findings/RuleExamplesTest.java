package bedledger.projections.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples that the rule sheets print are what the rules say. */
class RuleExamplesTest {
    static Stream<Arguments> rules() {
        return RuleBook.us().rules().stream()
                .map(rule -> Arguments.of(rule.sheet().id(), rule.sheet()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void isContentWithItsPassingExample(String id, RuleSheet sheet) {
        assertThat(outcomes(id, sheet.passing())).isEqualTo(expected(sheet.passing()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void speaksAgainstItsFailingExample(String id, RuleSheet sheet) {
        assertThat(sheet.failing().outcome()).isPresent().get().isNotEqualTo(Outcome.MET);
        assertThat(outcomes(id, sheet.failing())).isEqualTo(expected(sheet.failing()));
    }

    private static List<Outcome> expected(Example example) {
        return example.outcome().stream().toList();
    }

    private static List<Outcome> outcomes(String rule, Example example) {
        return PaperRecord.of(example.lines().toArray(String[]::new)).findingsOf(rule).stream()
                .map(Finding::outcome)
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void everyFindingThatIsNotMetSaysWhatWouldSettleItAndCites(String id, RuleSheet sheet) {
        Finding finding =
                PaperRecord.of(sheet.failing().lines().toArray(String[]::new)).theFindingOf(id);

        assertThat(finding.settles()).isNotBlank();
        assertThat(finding.citation()).isNotBlank();
        assertThat(finding.entries()).isNotEmpty();
        assertThat(finding.sentence()).endsWith(".").doesNotContainIgnoringCase("compliant");
    }

    @Test
    void theBookHasRulesAndNoIdTwice() {
        List<String> ids =
                RuleBook.us().rules().stream().map(rule -> rule.sheet().id()).toList();

        assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
    }
}

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
        return RuleBook.all().stream()
                .flatMap(book -> book.rules().stream()
                        .map(rule -> Arguments.of(
                                book, book.id() + " " + rule.sheet().id(), rule.sheet())));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("rules")
    void isContentWithItsPassingExample(RuleBook book, String id, RuleSheet sheet) {
        assertThat(outcomes(book, sheet, sheet.passing())).isEqualTo(expected(sheet.passing()));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("rules")
    void speaksAgainstItsFailingExample(RuleBook book, String id, RuleSheet sheet) {
        assertThat(sheet.failing().outcome()).isPresent().get().isNotEqualTo(Outcome.MET);
        assertThat(outcomes(book, sheet, sheet.failing())).isEqualTo(expected(sheet.failing()));
    }

    private static List<Outcome> expected(Example example) {
        return example.outcome().stream().toList();
    }

    private static List<Outcome> outcomes(RuleBook book, RuleSheet sheet, Example example) {
        return PaperRecord.of(example.lines().toArray(String[]::new)).by(book).findingsOf(sheet.id()).stream()
                .map(Finding::outcome)
                .toList();
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("rules")
    void everyFindingThatIsNotMetSaysWhatWouldSettleItAndCites(RuleBook book, String id, RuleSheet sheet) {
        Finding finding = PaperRecord.of(sheet.failing().lines().toArray(String[]::new))
                .by(book)
                .theFindingOf(sheet.id());

        assertThat(finding.settles()).isNotBlank();
        assertThat(finding.citation()).isNotBlank();
        assertThat(finding.entries()).isNotEmpty();
        assertThat(finding.sentence()).endsWith(".").doesNotContainIgnoringCase("compliant");
    }

    @Test
    void theBookHasRulesAndNoIdTwice() {
        assertThat(RuleBook.all())
                .allSatisfy(book -> assertThat(book.rules())
                        .extracting(rule -> rule.sheet().id())
                        .isNotEmpty()
                        .doesNotHaveDuplicates());
    }
}

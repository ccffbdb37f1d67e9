package bedledger.projections.findings;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.Farm;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RuleBookTest {
    private static final RuleBook US = RuleBook.us();

    /** An invented edition that asks 130 days from 2026 on; before, what the book asks now. */
    private static RuleBook twoEditions() {
        Figures later = US.figures()
                .with(new Figures.Figure("manure.days.soil", BigDecimal.valueOf(130), "days", "invented", "invented"));
        return new RuleBook(
                "us",
                "invented",
                US.jurisdiction(),
                US.source(),
                US.read(),
                US.figures(),
                List.of(
                        new ManureInterval(sheet("2002-10-21", LocalDate.parse("2025-12-31")), US.figures()),
                        new ManureInterval(sheet("2026-01-01", null), later)));
    }

    private static RuleSheet sheet(String from, @Nullable LocalDate to) {
        RuleSheet now = RuleSheet.read("us", "manure-interval");
        return new RuleSheet(
                now.id(),
                now.says(),
                now.citation(),
                now.basis(),
                LocalDate.parse(from),
                to,
                now.passing(),
                now.failing());
    }

    @Test
    void workIsJudgedByTheEditionOfItsDay() {
        PaperRecord record = PaperRecord.of(
                        "2025-04-01 spread N1 --manure cow --per-bed 60kg",
                        "2025-04-02 till N1",
                        "2025-05-01 sow N1 --crop carrot",
                        "2025-08-05 harvest N1 --crop carrot --quantity 9kg --lot 2025/C-1 --last yes",
                        "2026-04-01 spread N1 --manure cow --per-bed 60kg",
                        "2026-04-02 till N1",
                        "2026-05-01 sow N1 --crop carrot",
                        "2026-08-05 harvest N1 --crop carrot --quantity 9kg --lot 2026/C-1")
                .by(twoEditions());

        assertThat(record.findingsOf("manure-interval"))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.MET, Outcome.NOT_MET);
        assertThat(record.findingsOf("manure-interval").get(1).arithmetic()).endsWith("125 days, 130 asked");
    }

    @Test
    void everyFigureSaysWhereItStands() {
        assertThat(RuleBook.all().stream().flatMap(book -> book.figures().byName().values().stream()))
                .isNotEmpty()
                .allSatisfy(figure -> {
                    assertThat(figure.citation()).isNotBlank();
                    assertThat(figure.basis()).isNotBlank();
                    assertThat(figure.unit()).isNotBlank();
                });
    }

    @Test
    void everyRuleSaysWhatItAsksInOneSentence() {
        assertThat(RuleBook.all().stream().flatMap(book -> book.rules().stream()))
                .extracting(Rule::sheet)
                .allSatisfy(sheet -> assertThat(sheet.says()).endsWith("."));
    }

    @Test
    void theLastChoiceByTheDayAskedHolds() {
        Farm farm = PaperRecord.of(
                        "2026-02-01 choose-reading land-clean-from-same-date --applies no --basis letter",
                        "2026-03-01 choose-reading land-clean-from-same-date --applies yes --basis visit",
                        "2026-03-02 choose-reading a-reading-of-a-later-edition --applies yes --basis letter")
                .farm();
        Reading same = Reading.LAND_CLEAN_FROM_SAME_DATE;

        assertThat(Settings.of(farm, LocalDate.parse("2026-01-31"))).isEqualTo(Settings.defaults());
        assertThat(Settings.of(farm, LocalDate.parse("2026-02-28")))
                .isEqualTo(Settings.defaults().with(same, false));
        assertThat(Settings.of(farm, LocalDate.parse("2026-03-31"))).isEqualTo(Settings.defaults());
        assertThat(Settings.chosen(farm, LocalDate.parse("2026-03-31"))).containsOnlyKeys(same);
    }

    @ParameterizedTest
    @EnumSource(Reading.class)
    void aSettingCanBeTurnedBothWays(Reading reading) {
        Settings defaults = Settings.defaults();

        assertThat(defaults.is(reading)).isEqualTo(reading.byDefault());
        assertThat(defaults.with(reading, !reading.byDefault()).is(reading)).isNotEqualTo(reading.byDefault());
        assertThat(defaults.with(reading, reading.byDefault())).isEqualTo(defaults);
    }
}

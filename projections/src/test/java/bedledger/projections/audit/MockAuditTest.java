package bedledger.projections.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.Farm;
import bedledger.projections.audit.Thing.Kind;
import bedledger.projections.findings.Findings;
import bedledger.projections.findings.KnownCrops;
import bedledger.projections.findings.Outcome;
import bedledger.projections.findings.PaperRecord;
import bedledger.projections.findings.Rule;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.findings.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a mock audit could pick, why, how it draws, and how far the record answers. */
class MockAuditTest {
    private static final LocalDate END = LocalDate.parse("2026-12-31");

    /** A clean carrot, sold twice, and kale that is muddled in every way. No two acts on one day, so that they can be written in any order. */
    private static final List<String> LINES = List.of(
            "2020-01-02 declare-land North --none-since 2012-01-01 --evidence affidavit",
            "2026-02-01 receive-seed CA-1 --crop carrot --quantity 100g --organic yes --certificate c --supplier s --receipt 1",
            "2026-02-02 receive-seed KA-1 --crop kale --quantity 10g --organic no --treatment untreated --suppliers-asked 0",
            "2026-04-01 sow N1 --crop carrot --seed-lot CA-1 --quantity 20g",
            "2026-04-02 sow N2 --crop kale --seed-lot KA-1 --quantity 2g",
            "2026-04-03 list-material \"Kelp meal\" --approval letter",
            "2026-04-04 receive-material \"Kelp meal\" --quantity 20kg",
            "2026-04-05 spread N1 --material \"Kelp meal\" --quantity 5kg",
            "2026-07-01 harvest N1 --crop carrot --quantity 60kg --lot 2026/CA-1",
            "2026-07-02 harvest N2 --crop kale --quantity 9kg --lot 2026/KA-1",
            "2026-07-03 harvest N2 --crop kale --quantity 8kg --lot 2026/KA-2",
            "2026-07-04 join-lots 2026/KA-1=4kg 2026/KA-2=8kg --into 2026/KA-3",
            "2026-07-05 sell 2026/CA-1=40kg --as organic --buyer grocer --invoice 1",
            "2026-07-06 sell 2026/CA-1=10kg --as organic --buyer grocer --invoice 2",
            "2026-07-07 sell 2026/KA-3=14kg --as organic --invoice 3",
            "2026-07-08 sell 2026/KA-1=1kg --as not-organic",
            "2026-07-09 take-back 2026/KA-3=1kg --invoice 3 --why limp",
            "2026-07-10 count carrot --quantity 9kg",
            "2026-07-11 harvest N2 --crop kale --quantity 1kg --lot 2026/KA-4");

    private static Farm farm(List<String> lines) {
        return PaperRecord.of(lines.toArray(String[]::new)).farm();
    }

    private static MockAudit audit(Farm farm) {
        Findings findings = Findings.of(farm, RuleBook.us(), Settings.defaults(), new KnownCrops(), END);
        return MockAudit.of(farm, LocalDate.parse("2026-01-01"), END, "us", findings);
    }

    private static Candidate named(List<Candidate> candidates, String name) {
        return candidates.stream()
                .filter(candidate -> candidate.thing().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static LinkAnswer link(TraceAnswer answer, ChainLink link) {
        return answer.links().stream()
                .filter(each -> each.link() == link)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void asksAboutEverySaleAndEveryLotNoPartOfWhichIsOnAnInvoice() {
        assertThat(audit(farm(LINES)).traceable())
                .extracting(candidate -> candidate.thing().name())
                .containsExactlyInAnyOrder(
                        "invoice 1",
                        "invoice 2",
                        "invoice 3",
                        "sale without an invoice, 2026-07-08 of 2026/KA-1=1 kg",
                        "lot 2026/KA-4");
    }

    @Test
    void saysWhatSpeaksForAPick() {
        List<Candidate> all = audit(farm(LINES)).traceable();
        assertThat(named(all, "invoice 3").reasons())
                .extracting(Reason::words)
                .anyMatch(words -> words.startsWith("sold as organic, and seed-organic is not met"))
                .contains(
                        "more went out of lot 2026/KA-3 than came in",
                        "kale is sold as organic and otherwise",
                        "lot 2026/KA-3 was joined or split",
                        "seed lot KA-1 is not organic",
                        "invoice or buyer is not recorded",
                        "some of it was taken back");
        assertThat(named(all, "invoice 2").weight())
                .isLessThan(named(all, "invoice 3").weight() / 2);
    }

    @Test
    void theReasonsNameTheirEntries() {
        assertThat(named(audit(farm(LINES)).traceable(), "invoice 3").reasons())
                .allSatisfy(reason -> assertThat(reason.entries()).isNotEmpty());
    }

    @Test
    void balancesCropsAndWhatCameIn() {
        List<Candidate> all = audit(farm(LINES)).balanceable();
        assertThat(all)
                .extracting(candidate ->
                        candidate.thing().kind() + " " + candidate.thing().name())
                .containsExactlyInAnyOrder("CROP carrot", "CROP kale", "MATERIAL Kelp meal");
        assertThat(named(all, "kale").reasons())
                .extracting(Reason::words)
                .contains("not counted in the time asked about", "sold as organic and otherwise");
    }

    static List<Long> seeds() {
        return List.of(1L, 2L, 3L);
    }

    /** The same acts written in another order have other numbers. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void picksTheSameInWhateverOrderEntriesWereWritten(long seed) {
        List<String> shuffled = new ArrayList<>(LINES);
        Collections.shuffle(shuffled, new Random(seed));
        for (int draw = 0; draw < 20; draw++) {
            assertThat(picks(shuffled, "seed " + draw)).isEqualTo(picks(LINES, "seed " + draw));
        }
    }

    private static List<String> picks(List<String> lines, String seed) {
        MockAudit audit = audit(farm(lines));
        List<Candidate> drawn = new ArrayList<>(MockAudit.drawn(audit.traceable(), 3, seed));
        drawn.addAll(MockAudit.drawn(audit.balanceable(), 2, seed));
        return drawn.stream()
                .map(each -> each.thing().name() + " " + each.weight() + " "
                        + each.reasons().stream().map(Reason::words).toList())
                .toList();
    }

    @Test
    void anotherSeedPicksOtherwise() {
        List<Candidate> all = audit(farm(LINES)).traceable();
        assertThat(IntStream.range(0, 50)
                        .mapToObj(seed -> MockAudit.drawn(all, 2, "s" + seed))
                        .distinct())
                .hasSizeGreaterThan(5);
    }

    /** 20,000 draws of one of three: the shares are those of the weights, within four standard errors. */
    @Test
    void drawsInProportionToTheWeights() {
        List<Candidate> three = List.of(weighing("a", 1), weighing("b", 3), weighing("c", 6));
        int draws = 20_000;
        Map<String, Long> first = IntStream.range(0, draws)
                .mapToObj(seed ->
                        MockAudit.drawn(three, 1, "draw " + seed).get(0).thing().name())
                .collect(Collectors.groupingBy(name -> name, Collectors.counting()));
        Map.of("a", 0.1, "b", 0.3, "c", 0.6)
                .forEach((name, share) -> assertThat(first.getOrDefault(name, 0L) / (double) draws)
                        .isCloseTo(share, within(4 * Math.sqrt(share * (1 - share) / draws))));
    }

    private static Candidate weighing(String name, double weight) {
        return new Candidate(new Thing(Kind.SALE, name, name, name), List.of(new Reason("", weight, List.of())));
    }

    @Test
    void drawsNothingTwiceAndNoMoreThanThereIs() {
        List<Candidate> all = audit(farm(LINES)).traceable();
        assertThat(MockAudit.drawn(all, 99, "x")).hasSize(5).doesNotHaveDuplicates();
        assertThat(MockAudit.drawn(List.of(), 3, "x")).isEmpty();
    }

    @Test
    void tracesACleanSaleBackToTheLand() {
        MockAudit audit = audit(farm(LINES));
        TraceAnswer answer = audit.trace(named(audit.traceable(), "invoice 1").thing());
        assertThat(answer.links()).extracting(LinkAnswer::link).containsExactly(ChainLink.values());
        assertThat(link(answer, ChainLink.HARVEST).says()).isEqualTo("60 kg on 2026-07-01 from N1");
        assertThat(link(answer, ChainLink.SEED).outcome()).isEqualTo(Outcome.MET);
        assertThat(link(answer, ChainLink.INPUTS).says()).contains("Kelp meal spread 2026-04-05");
        assertThat(link(answer, ChainLink.LAND).says()).contains("nothing prohibited since 2012-01-01");
        assertThat(answer.lots())
                .extracting(lot -> lot.left().orElseThrow().toString())
                .containsExactly("10 kg");
    }

    @Test
    void tellsWhatEachLinkLeavesOpenAndWhatAnswersIt() {
        MockAudit audit = audit(farm(LINES));
        TraceAnswer answer = audit.trace(named(audit.traceable(), "invoice 3").thing());
        assertThat(answer.worst()).isEqualTo(Outcome.NOT_MET);
        assertThat(link(answer, ChainLink.SEED).open().get(0).citation()).contains("205.204");
        assertThat(link(answer, ChainLink.SALE).open())
                .extracting(Question::settles)
                .anyMatch(command -> command.contains("--buyer"));
        assertThat(link(answer, ChainLink.INPUTS).outcome()).isEqualTo(Outcome.ASK);
    }

    @Test
    void doesNotTakeSilenceOfWashingForAnAnswer() {
        MockAudit audit = audit(farm(LINES));
        TraceAnswer answer = audit.trace(named(audit.traceable(), "invoice 1").thing());
        assertThat(link(answer, ChainLink.LOT).outcome()).isEqualTo(Outcome.ASK);
        List<String> washed = new ArrayList<>(LINES);
        washed.add("2026-07-12 wash 2026/CA-1 --water well");
        MockAudit other = audit(farm(washed));
        TraceAnswer clear = other.trace(named(other.traceable(), "invoice 1").thing());
        assertThat(link(clear, ChainLink.LOT).open())
                .extracting(Question::says)
                .noneMatch(says -> says.startsWith("No washing"));
    }

    /** A book begun in spring tells nothing of the three years before a harvest in summer. */
    @Test
    void aYoungBookDoesNotAnswerForThreeYearsOfInputs() {
        Farm young = PaperRecord.empty()
                .write(
                        "2026-03-01 register-field South --gross 0.05ha",
                        "2026-03-01 lay-out S1 --field South --length 20m --width 0.75m",
                        "2026-04-05 spread S1 --manure horse --quantity 5kg",
                        "2026-04-06 sow S1 --crop carrot",
                        "2026-08-10 harvest S1 --crop carrot --quantity 9kg --lot 2026/C-1",
                        "2026-08-11 sell 2026/C-1=9kg --as organic --buyer grocer --invoice 1")
                .farm();
        MockAudit audit = audit(young);
        TraceAnswer answer = audit.trace(named(audit.traceable(), "invoice 1").thing());
        assertThat(link(answer, ChainLink.INPUTS).open())
                .extracting(Question::says)
                .contains(
                        "The book tells of no day before 2026-03-01: what was put on S1 from 2023-08-10 until then is not in it.");
    }

    /** Sale line with a lot that nothing began: the missing link is named. */
    @Test
    void namesTheLinkThatIsMissing() {
        MockAudit audit = audit(farm(List.of("2026-07-05 sell 2026/X-1=4kg --as organic --buyer grocer --invoice 1")));
        TraceAnswer answer = audit.trace(named(audit.traceable(), "invoice 1").thing());
        assertThat(link(answer, ChainLink.LOT).outcome()).isEqualTo(Outcome.INCOMPLETE);
        assertThat(link(answer, ChainLink.LOT).open().get(0).says()).contains("Nothing on record began lot 2026/X-1");
        assertThat(link(answer, ChainLink.LAND).outcome()).isEqualTo(Outcome.INCOMPLETE);
    }

    @Test
    void aBalanceWithoutCountsIsIncompleteAndOneThatDiffersIsAsked() {
        MockAudit audit = audit(farm(LINES));
        List<Candidate> all = audit.balanceable();
        assertThat(audit.balance(named(all, "kale").thing()).outcome()).isEqualTo(Outcome.INCOMPLETE);
        MockAudit counted = audit(farm(List.of(
                "2026-01-02 count carrot --quantity 0kg",
                "2026-04-01 sow N1 --crop carrot --quantity 20g",
                "2026-07-01 harvest N1 --crop carrot --quantity 60kg --lot 2026/CA-1",
                "2026-07-10 count carrot --quantity 57kg")));
        BalanceAnswer answer =
                counted.balance(named(counted.balanceable(), "carrot").thing());
        assertThat(answer.outcome()).isEqualTo(Outcome.ASK);
        assertThat(answer.open())
                .extracting(Question::says)
                .containsExactly("3 kg less was counted than the book expects.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"us", "eu"})
    void everyRuleIsToldWithALink(String book) {
        assertThat(ChainLink.ofRules(book).keySet())
                .containsExactlyInAnyOrderElementsOf(RuleBook.of(book).orElseThrow().rules().stream()
                        .map(Rule::sheet)
                        .map(sheet -> sheet.id())
                        .toList());
    }
}

package bedledger.cli.report;

import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.projections.findings.Outcome;
import bedledger.projections.findings.Reading;
import bedledger.projections.findings.Rule;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.findings.RuleSheet;
import bedledger.projections.findings.Settings;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Findings: counted, and in full, rule by rule. */
record FindingsPart(Asked asked, FindingLines lines) {
    private static final List<Outcome> WORST_FIRST =
            List.of(Outcome.NOT_MET, Outcome.INCOMPLETE, Outcome.ASK, Outcome.MET);

    Optional<RuleBook> book() {
        return asked.rules();
    }

    String wanted() {
        return asked.book().opened().rules();
    }

    static String anchor(String rule) {
        return "rule-" + rule;
    }

    Table outcomes() {
        return Table.of(
                "table-outcomes",
                "Findings by outcome",
                "Nothing was judged.",
                List.of("outcome", "how many", "what it means"),
                asked.rules().isEmpty()
                        ? List.of()
                        : WORST_FIRST.stream().map(this::outcome).toList());
    }

    private Row outcome(Outcome outcome) {
        return Row.of(
                Cell.of(FindingLine.symbol(outcome) + " " + outcome.words())
                        .asHeader()
                        .styled("whole"),
                Cell.number(Long.toString(lines.count(outcome))),
                Cell.of(meaning(outcome)));
    }

    private static String meaning(Outcome outcome) {
        return switch (outcome) {
            case NOT_MET -> "The record says something that goes against the rule's text.";
            case INCOMPLETE -> "The rule asks for a fact that is not on record. Missing is not the same as none.";
            case ASK -> "The text leaves it open, or certifiers read it differently: the certifier decides.";
            case MET -> "What the rule asks for is on record. Whether it is true, and enough, is for the inspector.";
        };
    }

    Table byRule() {
        return Table.of(
                "table-rules",
                "Findings by rule",
                "Nothing was judged.",
                List.of("rule", "✗ not met", "○ incomplete", "? ask", "✓ met", "citation"),
                rules().stream().map(this::rule).toList());
    }

    private List<Rule> rules() {
        return asked.rules().map(RuleBook::rules).orElse(List.of());
    }

    private Row rule(Rule rule) {
        RuleSheet sheet = rule.sheet();
        List<FindingLine> of = lines.ofRule(sheet.id());
        return Row.of(
                Cell.of(Phrase.link(sheet.id(), anchor(sheet.id()))).asHeader(),
                count(of, Outcome.NOT_MET),
                count(of, Outcome.INCOMPLETE),
                count(of, Outcome.ASK),
                count(of, Outcome.MET),
                Cell.of(sheet.citation()));
    }

    private static Cell count(List<FindingLine> lines, Outcome outcome) {
        return Cell.number(Long.toString(FindingLines.count(lines, outcome)));
    }

    /** Every rule with its citation, and where its text was read. */
    Table citations() {
        return Table.of(
                "table-citations",
                "Rules, their citations, and where the text was read",
                "No rule book was used.",
                List.of("citation", "rule", "what it asks", "text", "for work since"),
                rules().stream().map(this::citation).toList());
    }

    private Row citation(Rule rule) {
        RuleSheet sheet = rule.sheet();
        return Row.of(
                Cell.of(sheet.citation()).asHeader(),
                Cell.of(Phrase.link(sheet.id(), anchor(sheet.id()))),
                Cell.of(sheet.says()),
                Cell.of(sheet.basis()),
                Cell.whole(inForce(sheet)));
    }

    private static String inForce(RuleSheet sheet) {
        return sheet.from() + (sheet.to() == null ? "" : " to " + sheet.to());
    }

    List<ReadingLine> readings() {
        Settings settings = Settings.of(asked.book().farm(), asked.day());
        Map<Reading, Entry> chosen = Settings.chosen(asked.book().farm(), asked.day());
        return Arrays.stream(Reading.values())
                .map(reading -> new ReadingLine(
                        reading.sentence(),
                        (settings.is(reading) ? "on" : "off")
                                + Optional.ofNullable(chosen.get(reading))
                                        .map(FindingsPart::by)
                                        .orElse("")))
                .toList();
    }

    private static String by(Entry chosen) {
        return ", as chosen in entry " + chosen.number() + ": " + ((BookKeeping.ReadingChosen) chosen.fact()).basis();
    }

    /** A reading on which certifiers differ, and how it was set. */
    record ReadingLine(String sentence, String set) {}

    /** Rule by rule, made one by one as they are written. */
    Iterable<RulePart> inFull() {
        return this::ruleIterator;
    }

    private Iterator<RulePart> ruleIterator() {
        return rules().stream()
                .filter(rule -> !lines.ofRule(rule.sheet().id()).isEmpty())
                .map(this::part)
                .iterator();
    }

    private RulePart part(Rule rule) {
        RuleSheet sheet = rule.sheet();
        List<FindingLine> of = lines.ofRule(sheet.id());
        Iterable<FullFinding> met = () -> of.stream()
                .filter(FindingLine::isMet)
                .map(line -> FullFinding.of(asked.links(), line))
                .iterator();
        return new RulePart(
                anchor(sheet.id()),
                sheet,
                inForce(sheet),
                of.stream().filter(line -> !line.isMet()).toList(),
                FindingLines.count(of, Outcome.MET) > 0,
                met);
    }

    /** One rule: links to its open findings, and those met in full. */
    record RulePart(
            String anchor,
            RuleSheet sheet,
            String inForce,
            List<FindingLine> open,
            boolean anyMet,
            Iterable<FullFinding> met) {
        boolean hasOpen() {
            return !open.isEmpty();
        }
    }

    /** Rules by which nothing in the record is judged. */
    List<RuleSheet> silent() {
        return rules().stream()
                .map(Rule::sheet)
                .filter(sheet -> lines.ofRule(sheet.id()).isEmpty())
                .toList();
    }

    boolean hasSilent() {
        return !silent().isEmpty();
    }

    /** What is not met, incomplete or to be asked, place by place. */
    Iterable<FindingPlaces.Group> places() {
        return new FindingPlaces(asked.links(), lines);
    }

    boolean hasOpen() {
        return lines.all().stream().anyMatch(line -> !line.isMet());
    }
}

package bedledger.cli.report;

import bedledger.language.LotId;
import bedledger.language.Place;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Findings;
import bedledger.projections.findings.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** All findings, numbered in the order they stand in the report: by rule, and within a rule the worst first. */
final class FindingLines {
    private final Map<String, List<FindingLine>> byRule = new HashMap<>();
    private final Map<Place, List<FindingLine>> byPlace = new HashMap<>();
    private final List<FindingLine> all = new ArrayList<>();

    /** By the order in which the rules' findings come. */
    FindingLines(Findings findings) {
        Map<String, List<Finding>> rules = new java.util.LinkedHashMap<>();
        findings.all()
                .forEach(finding -> rules.computeIfAbsent(finding.rule(), rule -> new ArrayList<>())
                        .add(finding));
        rules.values()
                .forEach(of -> of.stream()
                        .sorted(Comparator.comparing(Finding::outcome).reversed())
                        .forEach(this::add));
    }

    private void add(Finding finding) {
        FindingLine line = new FindingLine(all.size() + 1, finding);
        all.add(line);
        byRule.computeIfAbsent(finding.rule(), rule -> new ArrayList<>()).add(line);
        finding.places().forEach(place -> add(place, line));
        finding.lots().forEach(lot -> add(lot, line));
    }

    private void add(Place place, FindingLine line) {
        List<FindingLine> lines = byPlace.computeIfAbsent(place, any -> new ArrayList<>());
        if (!lines.contains(line)) {
            lines.add(line);
        }
    }

    List<FindingLine> all() {
        return List.copyOf(all);
    }

    List<FindingLine> ofRule(String rule) {
        return byRule.getOrDefault(rule, List.of());
    }

    /** What concerns a place or lot, the worst first. */
    List<FindingLine> of(Place place) {
        return byPlace.getOrDefault(place, List.of()).stream()
                .sorted(Comparator.comparing(
                                (FindingLine line) -> line.finding().outcome())
                        .reversed())
                .toList();
    }

    /** What concerns any of several places and none of another, the worst first. */
    List<FindingLine> beside(Place but, List<Place> places) {
        List<FindingLine> own = of(but);
        return places.stream()
                .flatMap(place -> of(place).stream())
                .filter(line -> !own.contains(line))
                .distinct()
                .sorted(Comparator.comparing(
                                (FindingLine line) -> line.finding().outcome())
                        .reversed())
                .toList();
    }

    long count(Outcome outcome) {
        return all.stream().filter(line -> line.finding().outcome() == outcome).count();
    }

    static long count(List<FindingLine> lines, Outcome outcome) {
        return lines.stream()
                .filter(line -> line.finding().outcome() == outcome)
                .count();
    }

    /** For a cell: one line for each finding that is not met, incomplete or to be asked, and how many are met. */
    List<Phrase> phrases(LotId lot) {
        List<FindingLine> lines = of(lot);
        List<Phrase> phrases = new ArrayList<>();
        lines.stream()
                .filter(line -> !line.isMet())
                .forEach(line -> phrases.add(
                        Phrase.link(line.symbol() + " " + line.words() + ": " + line.rule(), line.anchor())));
        long met = count(lines, Outcome.MET);
        if (met > 0) {
            phrases.add(Phrase.of(met + " met"));
        }
        return phrases;
    }
}

package bedledger.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The findings that concern one thing: those not met, incomplete or to be asked line by line, those met in one line. */
record Concerning(List<FindingLine> open, List<MetLine> met) {
    /** One or several findings of a rule that are met, and whether another rule follows. */
    record MetLine(String href, String rule, String subject, boolean comma) {}

    static Concerning of(List<FindingLine> findings) {
        Map<String, List<FindingLine>> met = new LinkedHashMap<>();
        findings.stream()
                .filter(FindingLine::isMet)
                .forEach(line -> met.computeIfAbsent(line.rule(), rule -> new ArrayList<>())
                        .add(line));
        List<MetLine> lines = new ArrayList<>();
        met.forEach((rule, of) -> lines.add(met(rule, of, lines.size() < met.size() - 1)));
        return new Concerning(findings.stream().filter(line -> !line.isMet()).toList(), lines);
    }

    /** A single finding by its subject; several by how many they are. */
    private static MetLine met(String rule, List<FindingLine> of, boolean comma) {
        return of.size() == 1
                ? new MetLine(of.get(0).href(), rule, of.get(0).subject(), comma)
                : new MetLine("#" + FindingsPart.anchor(rule), rule, of.size() + " findings", comma);
    }

    boolean isAny() {
        return !open.isEmpty() || !met.isEmpty();
    }

    boolean hasMet() {
        return !met.isEmpty();
    }
}

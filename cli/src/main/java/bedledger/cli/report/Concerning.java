package bedledger.cli.report;

import java.util.ArrayList;
import java.util.List;

/** The findings that concern one thing: those not met, incomplete or to be asked line by line, those met in one line. */
record Concerning(List<FindingLine> open, List<MetLine> met) {
    /** A finding that is met, and whether another follows. */
    record MetLine(String href, String rule, String subject, boolean comma) {}

    static Concerning of(List<FindingLine> findings) {
        List<FindingLine> met = findings.stream().filter(FindingLine::isMet).toList();
        List<MetLine> lines = new ArrayList<>();
        for (int at = 0; at < met.size(); at++) {
            FindingLine line = met.get(at);
            lines.add(new MetLine(line.href(), line.rule(), line.subject(), at < met.size() - 1));
        }
        return new Concerning(findings.stream().filter(line -> !line.isMet()).toList(), lines);
    }

    boolean isAny() {
        return !open.isEmpty() || !met.isEmpty();
    }

    boolean hasMet() {
        return !met.isEmpty();
    }
}

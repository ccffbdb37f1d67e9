package bedledger.cli.report;

import bedledger.language.Words;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Outcome;

/** A finding in one line, linked to where it stands in full. */
record FindingLine(int number, Finding finding) {
    String anchor() {
        return "finding-" + number;
    }

    String href() {
        return "#" + anchor();
    }

    String symbol() {
        return symbol(finding.outcome());
    }

    /** A class of the style sheet: the outcome with hyphens. */
    String style() {
        return Words.of(finding.outcome());
    }

    String words() {
        return finding.outcome().words();
    }

    String subject() {
        return finding.subject();
    }

    String rule() {
        return finding.rule();
    }

    boolean isMet() {
        return finding.outcome() == Outcome.MET;
    }

    /** A mark for the eye; the words always stand beside it. */
    static String symbol(Outcome outcome) {
        return switch (outcome) {
            case MET -> "✓";
            case ASK -> "?";
            case INCOMPLETE -> "○";
            case NOT_MET -> "✗";
        };
    }
}

package bedledger.cli.report;

import bedledger.language.Place;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Sale;
import java.util.ArrayList;
import java.util.List;

/** One finding with everything it rests on, and every place and lot it bears on. */
record FullFinding(FindingLine line, Phrase sentence, Phrase concerns, Phrase entries, Phrase sales) {
    static FullFinding of(Links links, FindingLine line) {
        Finding finding = line.finding();
        List<Place> concerned = new ArrayList<>(finding.places());
        concerned.addAll(finding.lots());
        return new FullFinding(
                line,
                links.linked(finding.sentence()),
                links.places(concerned.stream().distinct().toList()),
                links.entries(finding.entries()),
                links.entries(
                        finding.sales().stream().map(Sale::entry).distinct().toList()));
    }

    Finding finding() {
        return line.finding();
    }

    String rule() {
        return finding().rule();
    }

    String ruleHref() {
        return "#" + FindingsPart.anchor(finding().rule());
    }

    String day() {
        return finding().day().toString();
    }

    boolean hasArithmetic() {
        return !finding().arithmetic().isEmpty();
    }

    boolean isConcerning() {
        return !concerns.isEmpty();
    }

    boolean hasSales() {
        return !sales.isEmpty();
    }

    boolean isOpen() {
        return !finding().settles().isEmpty();
    }
}

package bedledger.projections.findings;

import java.util.List;

/** The EU book: which rules it has, in the order their findings are listed. */
final class EuRules {
    private static final String BOOK = "eu";

    static RuleBook book() {
        return RuleBook.read(BOOK, EuRules::rules);
    }

    private static List<Rule> rules(Figures figures) {
        return List.of();
    }

    private EuRules() {}
}

package bedledger.projections.findings;

import java.util.List;

/**
 * One jurisdiction's rules at an edition.
 *
 * @param id as in {@code us}
 * @param source the publication the texts were read in
 * @param read when they were read
 * @param rules in the order their findings are listed
 */
public record RuleBook(
        String id, String edition, String jurisdiction, String source, String read, Figures figures, List<Rule> rules) {
    public RuleBook {
        rules = List.copyOf(rules);
    }

    /** The US National Organic Program, with subpart F of the FDA's produce rule beside it. */
    public static RuleBook us() {
        return UsRules.book();
    }
}

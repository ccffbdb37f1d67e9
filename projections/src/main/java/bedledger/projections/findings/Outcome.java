package bedledger.projections.findings;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;

/** What a rule says of one thing, from the best to the worst. No outcome says that a farm keeps the law: that is the certifier's word. */
public enum Outcome {
    MET("met"),
    /** The text leaves it open, or the reading differs from certifier to certifier. */
    ASK("ask"),
    /** A fact that the rule asks for is not recorded. */
    INCOMPLETE("incomplete"),
    NOT_MET("not met");

    private final String words;

    Outcome(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The worst of several; met if there are none. */
    public static Outcome worst(Collection<Outcome> outcomes) {
        return outcomes.stream().max(Comparator.naturalOrder()).orElse(MET);
    }

    static Outcome parse(String words) {
        return Arrays.stream(values())
                .filter(outcome -> outcome.words.equals(words))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no outcome '" + words + "'"));
    }

    @Override
    public String toString() {
        return words;
    }
}

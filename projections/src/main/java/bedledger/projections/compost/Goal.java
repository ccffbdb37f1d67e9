package bedledger.projections.compost;

import bedledger.projections.tables.Parameter;
import bedledger.projections.tables.Parameters;

/** What a mix is to be brought to. */
public enum Goal {
    /** C:N of the mix, a plain number. */
    CARBON_TO_NITROGEN("carbon to nitrogen", 1),
    /** Water of fresh weight, 0 to 1. */
    WATER("water", 0.01);

    private static final String SET = "mix";

    private final String words;
    private final double factor;

    Goal(String words, double factor) {
        this.words = words;
        this.factor = factor;
    }

    public String words() {
        return words;
    }

    /** What most mixes are brought to at the start, where nobody says otherwise. */
    public double usual() {
        return row(words).value() * factor;
    }

    /** The row behind {@link #usual}. */
    public Parameter row() {
        return row(words);
    }

    /** Water below which a pile goes slowly, 0 to 1. */
    public static double tooDry() {
        return row("water too dry").value() * WATER.factor;
    }

    private static Parameter row(String name) {
        return Table.GOALS.get(SET, name);
    }

    /** Read once. */
    private static final class Table {
        static final Parameters GOALS = Parameters.of("compost-goals");
    }
}

package bedledger.projections.breakdown;

import bedledger.language.Entry;
import bedledger.language.Softness;
import bedledger.language.Words;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.estimate.SampleWarning;
import bedledger.projections.returned.Left;
import bedledger.projections.tables.Range;
import bedledger.projections.tables.TableFile;
import bedledger.projections.tables.TableFile.Row;
import bedledger.projections.tables.Tables;
import java.util.HashMap;
import java.util.Map;

/**
 * What was seen of one piece on one day, as a share of its dry mass with a standard error.
 *
 * @param of which part it tells of; quadrats tell of what lies on top of both
 * @param day index of the day
 * @param words what was seen
 */
record Look(Entry entry, Going piece, Of of, int day, double share, double error, String words) {
    /** The part of the residue looked at. */
    enum Of {
        LEAVES,
        STALKS,
        BOTH
    }

    /** Two-sided 95 % of a normal distribution, in standard errors. */
    private static final double NINETY_FIVE = 1.96;

    private static final Map<String, Row> SEEN = new HashMap<>();

    static {
        new TableFile("breakdown-looks", Tables.EDITION)
                .rows(row -> row)
                .forEach(row -> SEEN.put(row.text("part") + " " + row.text("look"), row));
    }

    /** A word of softness. */
    static Look soft(Entry entry, Going piece, Of of, int day, Softness softness) {
        String part = of == Of.LEAVES ? "leaves" : "stalks";
        String seen = part + " " + Words.of(softness);
        Row row = SEEN.get(seen);
        Range range = row == null ? null : row.range();
        if (row == null || range == null) {
            throw new IllegalStateException("The table of looks has no row with a range for " + seen + ".");
        }
        double error = (range.high() - range.low()) / (2 * NINETY_FIVE);
        return new Look(entry, piece, of, day, row.number("value"), error, seen);
    }

    /** Quadrats cut after flailing; {@code dry} is what was found, kg. */
    static Look quadrats(Left left, Estimate dry, Going piece, int day, MassUnit unit) {
        double in = piece.mass.best();
        double found = dry.best();
        double sampling = dry.hasBand()
                ? Math.max(
                        (dry.high() - found) / NINETY_FIVE,
                        Constants.get("least error of quadrats").value() * found)
                : Constants.get("error of one quadrat").value() * found;
        double mass = Math.min(1, found / in) * (piece.mass.high() - piece.mass.low()) / (2 * NINETY_FIVE);
        boolean doubtful =
                left.warnings().stream().anyMatch(each -> each.kind() == SampleWarning.Kind.DRY_SHARE_OUTSIDE_TABLE);
        double times = doubtful ? Constants.get("error times").value() : 1;
        String weight = doubtful ? ", its dry share outside the table's: it weighs little" : "";
        return new Look(
                left.entry(),
                piece,
                Of.BOTH,
                day,
                found / in,
                times * Math.hypot(sampling, mass) / in,
                "quadrats, " + unit.words(dry) + " dry" + weight);
    }

    double logLikelihood(double modelled) {
        double away = (share - modelled) / error;
        return -away * away / 2;
    }

    String inWords() {
        return "#" + entry.number() + " " + piece.bed + " " + entry.head().doneOn() + ": " + words;
    }
}

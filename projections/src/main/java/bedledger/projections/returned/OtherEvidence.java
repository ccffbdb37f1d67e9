package bedledger.projections.returned;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.MassUnit;

/**
 * Evidence for the same shoots that was not used, before anything was hauled off.
 *
 * @param overlaps whether its interval and that of the one used have a value in common
 */
public record OtherEvidence(Evidence evidence, Estimate dry, boolean overlaps, String words) {
    static OtherEvidence beside(Estimate used, Evidence evidence, Estimate other, String note, MassUnit unit) {
        boolean overlaps = Intervals.overlap(used, other);
        String words = evidence.words() + ": " + unit.words(other) + " dry beside " + unit.words(used) + "; "
                + verdict(used, evidence, other) + (note.isEmpty() ? "" : "; " + note);
        return new OtherEvidence(evidence, other, overlaps, words);
    }

    /** A guess cannot contradict a measurement. */
    private static String verdict(Estimate used, Evidence evidence, Estimate other) {
        return evidence == Evidence.TYPICAL && !Intervals.overlap(used, other)
                ? "the intervals do not overlap, but a typical yield is a guess about fields, not about this bed"
                : Intervals.words(used, other);
    }
}

package bedledger.projections.nitrogen;

import bedledger.language.Entry;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Return;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What comes together beside the figures of one release. */
final class Saying {
    private final List<String> missing = new ArrayList<>();
    private final List<String> words = new ArrayList<>();

    void missing(String gap) {
        missing.add(gap);
    }

    void word(String sentence) {
        words.add(sentence);
    }

    List<String> missing() {
        return missing;
    }

    List<String> words() {
        return words;
    }

    void aboutRatio(boolean capped, Estimate ratio) {
        if (capped) {
            word(String.format(
                    Locale.ROOT,
                    "C:N %.1f is taken as 12: below that the residue module is known to say too much (Justes et al. 2009)",
                    ratio.best()));
        }
    }

    void aboutPlace(Return piece, Optional<Entry> worked) {
        if (piece.kind().isRoots()) {
            word("roots decay in the soil from the day the crop ended");
        } else if (worked.isEmpty()) {
            word("never worked in: it decays on top, about 1 t dry per ha of it at a time");
        } else if (BedSpans.isHarrowing(worked.get())) {
            word("harrowed on " + worked.get().head().doneOn() + " (#"
                    + worked.get().number()
                    + "): how much of it a harrow buries is in doubt, a tenth to three quarters");
        } else {
            word("worked in on " + worked.get().head().doneOn() + " (#"
                    + worked.get().number() + ")");
        }
    }
}

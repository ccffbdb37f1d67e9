package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.Coefficient;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * One piece of what went back: shoots or roots of a cropping, or one spreading.
 *
 * @param what the crop or material, by its name in the tables where they know it
 * @param day when the crop ended, or the matter was spread
 * @param beds the beds it went to, each with its share
 * @param matter all beds together; empty parts are named in {@code missing}
 * @param missing what could not be worked out, and for want of what
 * @param remarks what has to be said beside the figures
 * @param method how the dry mass was worked out, one sentence
 * @param coefficients those of the tables, or the farm's own, that moved a figure
 * @param others evidence that was not used
 * @param crossChecks published methods for the same harvest
 * @param entries the numbers of the entries behind it
 */
public record Return(
        SourceKind kind,
        String what,
        LocalDate day,
        List<BedShare> beds,
        Evidence evidence,
        Matter matter,
        List<String> missing,
        List<String> remarks,
        String method,
        List<Coefficient> coefficients,
        List<OtherEvidence> others,
        List<CrossCheck> crossChecks,
        SortedSet<Long> entries) {
    public Return {
        beds = List.copyOf(beds);
        missing = List.copyOf(missing);
        remarks = List.copyOf(remarks);
        coefficients = List.copyOf(coefficients);
        others = List.copyOf(others);
        crossChecks = List.copyOf(crossChecks);
        entries = Collections.unmodifiableSortedSet(new TreeSet<>(entries));
        matter = matter.behind(entries);
    }

    /** Whether its dry mass is known; parts of it may still be missing. */
    public boolean isKnown() {
        return matter.dry().isPresent();
    }

    public boolean isSharedByArea() {
        return beds.stream().anyMatch(BedShare::byArea);
    }

    /** What of it went to one bed; nothing known for a bed that it did not go to. */
    public Matter on(BedId bed) {
        return beds.stream()
                .filter(share -> share.bed().equals(bed))
                .findFirst()
                .map(share -> matter.times(share.share()))
                .orElse(Matter.UNKNOWN);
    }

    /** Everything to be said beside the figures: remarks, what is missing, what the estimate says of itself, other evidence, cross-checks. */
    public List<String> words() {
        Set<String> words = new LinkedHashSet<>(remarks);
        missing.forEach(each -> words.add("incomplete: " + each));
        matter.dry().map(Estimate::remarks).ifPresent(words::addAll);
        others.forEach(each -> words.add(each.words()));
        crossChecks.forEach(each -> words.add(each.words()));
        return List.copyOf(words);
    }
}

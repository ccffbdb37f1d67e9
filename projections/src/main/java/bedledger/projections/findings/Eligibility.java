package bedledger.projections.findings;

import bedledger.language.Lineage;
import bedledger.language.LotId;
import java.util.Comparator;
import java.util.List;

/**
 * What the findings say of selling a lot as organic; of a lot that was joined, as of its worst part.
 *
 * @param worst the worst outcome of all findings that name the lot; incomplete where none names it, or none names one of the lots it
 *     was joined of, for then nothing is known of where that grew
 * @param reasons those findings, the worst first, else in the order of the findings
 */
public record Eligibility(LotId lot, Outcome worst, List<Finding> reasons) {
    public Eligibility {
        reasons = List.copyOf(reasons);
    }

    public static Eligibility of(LotId lot, Lineage lineage, Findings findings) {
        List<Finding> reasons = findings.concerning(lot).stream()
                .sorted(Comparator.comparing(Finding::outcome).reversed())
                .toList();
        boolean allKnown = lineage.origins(lot).stream()
                .noneMatch(origin -> findings.concerning(origin).isEmpty());
        Outcome worst = reasons.isEmpty() ? Outcome.INCOMPLETE : reasons.get(0).outcome();
        return new Eligibility(lot, allKnown ? worst : worse(worst, Outcome.INCOMPLETE), reasons);
    }

    private static Outcome worse(Outcome one, Outcome other) {
        return one.compareTo(other) >= 0 ? one : other;
    }
}

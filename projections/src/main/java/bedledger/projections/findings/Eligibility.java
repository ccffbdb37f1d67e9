package bedledger.projections.findings;

import bedledger.language.LotId;
import java.util.Comparator;
import java.util.List;

/**
 * What the findings say of selling a lot as organic.
 *
 * @param worst the worst outcome of all findings that name the lot; incomplete if none does, for then nothing is known of where it grew
 * @param reasons those findings, the worst first, else in the order of the findings
 */
public record Eligibility(LotId lot, Outcome worst, List<Finding> reasons) {
    public Eligibility {
        reasons = List.copyOf(reasons);
    }

    public static Eligibility of(LotId lot, Findings findings) {
        List<Finding> reasons = findings.concerning(lot).stream()
                .sorted(Comparator.comparing(Finding::outcome).reversed())
                .toList();
        Outcome worst = reasons.isEmpty() ? Outcome.INCOMPLETE : reasons.get(0).outcome();
        return new Eligibility(lot, worst, reasons);
    }
}

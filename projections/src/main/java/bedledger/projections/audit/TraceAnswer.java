package bedledger.projections.audit;

import bedledger.language.LotAccount;
import bedledger.projections.findings.Outcome;
import java.util.List;

/**
 * A trace-back as far as the record goes.
 *
 * @param links every link of the chain, from the sale on; of a lot that nobody bought, from the lot on
 * @param lots what came in and went out of each lot picked, on paper
 */
public record TraceAnswer(List<LinkAnswer> links, List<LotAccount> lots) {
    public TraceAnswer {
        links = List.copyOf(links);
        lots = List.copyOf(lots);
    }

    public Outcome worst() {
        return Outcome.worst(links.stream().map(LinkAnswer::outcome).toList());
    }
}

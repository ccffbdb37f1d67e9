package bedledger.projections.audit;

import bedledger.projections.balance.Balance;
import bedledger.projections.findings.Outcome;
import java.util.List;

/** A mass balance, and what is open of it. */
public record BalanceAnswer(Balance balance, List<Question> open) {
    public BalanceAnswer {
        open = List.copyOf(open);
    }

    public Outcome outcome() {
        return Outcome.worst(open.stream().map(Question::outcome).toList());
    }
}

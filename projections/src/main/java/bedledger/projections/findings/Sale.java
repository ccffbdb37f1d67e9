package bedledger.projections.findings;

import bedledger.language.LotId;
import bedledger.language.SoldAs;
import bedledger.language.Words;
import org.jspecify.annotations.Nullable;

/**
 * How a lot left the farm for money.
 *
 * @param entry the number of the entry that says so
 */
public record Sale(LotId lot, SoldAs as, @Nullable String invoice, long entry) {
    @Override
    public String toString() {
        String claim = Words.of(as).replace('-', ' ');
        return lot + " was sold as " + claim + (invoice == null ? ", no invoice recorded" : " on invoice " + invoice);
    }
}

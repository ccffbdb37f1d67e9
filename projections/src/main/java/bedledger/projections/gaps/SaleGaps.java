package bedledger.projections.gaps;

import bedledger.language.Entry;
import bedledger.language.Harvesting;
import bedledger.language.LotAmount;
import bedledger.language.Selling;
import bedledger.projections.gaps.Gap.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Sales without an invoice or a buyer, gifts and losses without a destination. */
final class SaleGaps {
    static Stream<Gap> of(Looked looked) {
        return Stream.of(
                        looked.done(Selling.Sold.class).stream().flatMap(SaleGaps::sold),
                        looked.done(Selling.Donated.class).stream().flatMap(SaleGaps::donated),
                        looked.done(Harvesting.LotLost.class).stream().flatMap(SaleGaps::lost))
                .flatMap(gaps -> gaps);
    }

    private static Stream<Gap> sold(Entry entry) {
        Selling.Sold sold = (Selling.Sold) entry.fact();
        List<Gap> gaps = new ArrayList<>();
        if (sold.invoice() == null) {
            gaps.add(gap(entry, sold.lots(), "sold", "No invoice is named.", "--invoice NUMBER"));
        }
        if (sold.buyer() == null) {
            gaps.add(gap(entry, sold.lots(), "sold", "Who bought it is not recorded.", "--buyer \"NAME\""));
        }
        return gaps.stream();
    }

    private static Stream<Gap> donated(Entry entry) {
        Selling.Donated donated = (Selling.Donated) entry.fact();
        return donated.to() == null
                ? Stream.of(gap(entry, donated.lots(), "given away", "To whom is not recorded.", "--to \"NAME\""))
                : Stream.empty();
    }

    private static Stream<Gap> lost(Entry entry) {
        Harvesting.LotLost lost = (Harvesting.LotLost) entry.fact();
        return lost.to() == null
                ? Stream.of(gap(entry, lost.lots(), "lost", "Where it went is not recorded.", "--to \"WHERE\""))
                : Stream.empty();
    }

    private static Gap gap(Entry entry, List<LotAmount> lots, String how, String says, String what) {
        return new Gap(
                Topic.SALES,
                Looked.list(lots) + " " + how + " on " + entry.head().doneOn(),
                says,
                Looked.correct(entry, what),
                List.of(entry.number()));
    }

    private SaleGaps() {}
}

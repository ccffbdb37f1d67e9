package bedledger.projections.findings;

import bedledger.language.LotId;
import bedledger.language.Place;
import java.time.LocalDate;
import java.util.List;

/**
 * A rule's judgement of one thing.
 *
 * @param rule the rule's id
 * @param subject what is judged, in a few words
 * @param day the day of the work judged; the rule of that day is the one applied
 * @param places beds, fields, piles, seed lots and materials concerned, in natural order
 * @param lots the lots concerned, in natural order
 * @param sales how those lots were sold, lot by lot, in the order of the work
 * @param sentence for a grower
 * @param arithmetic as in {@code 2025-07-30 − 2025-04-02 = 119 days, 120 asked}; empty if nothing was counted
 * @param entries the numbers of the entries it rests on, ascending
 * @param settles what would settle it; empty if nothing is open
 */
public record Finding(
        String rule,
        Outcome outcome,
        String subject,
        LocalDate day,
        List<Place> places,
        List<LotId> lots,
        List<Sale> sales,
        String sentence,
        String arithmetic,
        List<Long> entries,
        String citation,
        String settles) {
    public Finding {
        places = List.copyOf(places);
        lots = List.copyOf(lots);
        sales = List.copyOf(sales);
        entries = List.copyOf(entries);
    }

    public boolean concerns(LotId lot) {
        return lots.contains(lot);
    }
}

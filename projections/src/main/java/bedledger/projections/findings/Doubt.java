package bedledger.projections.findings;

import java.util.List;

/**
 * What a rule would say of planting a crop in a bed on the day asked.
 *
 * @param outcome never met
 * @param why in a sentence for a grower
 * @param entries the numbers of the entries it rests on
 */
public record Doubt(String rule, Outcome outcome, String why, List<Long> entries, String citation) {
    public Doubt {
        entries = List.copyOf(entries);
    }
}

package bedledger.projections.findings;

import bedledger.language.Farm;
import bedledger.language.LotId;
import bedledger.language.NaturalOrder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What a rule book says of a farm's record on a day: by rule, then subject, then day; the same in whatever order entries come in. */
public record Findings(List<Finding> all) {
    private static final Comparator<Finding> WITHIN_RULE = Comparator.comparing(Finding::subject, NaturalOrder.INSTANCE)
            .thenComparing(Finding::day)
            .thenComparing(Finding::outcome)
            .thenComparing(Finding::sentence);

    public Findings {
        all = List.copyOf(all);
    }

    /** Judges each piece of work by the rules in force on the day it was done. */
    public static Findings of(Farm farm, RuleBook book, Settings settings, CropFacts crops, LocalDate asOf) {
        Inquiry inquiry = new Inquiry(farm, settings, crops, asOf);
        List<Finding> all = new ArrayList<>();
        for (Rule rule : book.rules()) {
            rule.judge(inquiry).stream()
                    .filter(finding -> rule.sheet().inForceOn(finding.day()))
                    .sorted(WITHIN_RULE)
                    .forEach(all::add);
        }
        return new Findings(all);
    }

    public List<Finding> of(String rule) {
        return all.stream().filter(finding -> finding.rule().equals(rule)).toList();
    }

    public List<Finding> with(Outcome outcome) {
        return all.stream().filter(finding -> finding.outcome() == outcome).toList();
    }

    public List<Finding> concerning(LotId lot) {
        return all.stream().filter(finding -> finding.concerns(lot)).toList();
    }
}

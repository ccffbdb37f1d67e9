package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.Farm;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * From when on a crop may be picked from a bed, as the record stands on a day.
 *
 * @param waits what is still to be waited for, the longest first; a wait without an end before all others
 */
public record EarliestHarvest(BedId bed, CropName crop, List<Wait> waits) {
    public EarliestHarvest {
        waits = List.copyOf(waits);
    }

    public static EarliestHarvest of(
            Farm farm, RuleBook book, Settings settings, CropFacts crops, BedId bed, CropName crop, LocalDate asOf) {
        Inquiry inquiry = new Inquiry(farm, settings, crops, asOf);
        List<Wait> waits = book.rules().stream()
                .filter(rule -> rule.sheet().inForceOn(asOf))
                .flatMap(rule -> rule.waits(inquiry, bed, crop).stream())
                .filter(wait -> wait.from() == null || wait.from().isAfter(asOf))
                .sorted(Comparator.comparing(Wait::from, Comparator.nullsFirst(Comparator.<LocalDate>reverseOrder()))
                        .thenComparing(Wait::rule)
                        .thenComparing(Wait::why))
                .toList();
        return new EarliestHarvest(bed, crop, waits);
    }

    /** Whether no rule asks to wait. */
    public boolean free() {
        return waits.isEmpty();
    }

    /** The first day that every rule is content with; empty if there is nothing to wait for, or no end of it in sight. */
    public Optional<LocalDate> day() {
        return waits.isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(waits.get(0).from());
    }

    public String why() {
        return waits.stream().map(Wait::why).collect(Collectors.joining(" "));
    }
}

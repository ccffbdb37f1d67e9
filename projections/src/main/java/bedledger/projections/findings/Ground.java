package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.FieldId;
import bedledger.language.Harvesting;
import bedledger.language.LotId;
import java.time.LocalDate;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/** Whether land was three years clean on the day something was picked from it, from the best to the worst. */
enum Ground {
    CLEAN,
    NOT_KNOWN,
    NOT_CLEAN;

    /** Of a lot, by the harvest that began it. */
    static Ground of(Inquiry inquiry, Figures figures, LotId lot) {
        return inquiry.done(lot, Harvesting.Harvested.class).stream()
                .filter(harvest -> harvest.fact().lot().equals(lot))
                .findFirst()
                .map(harvest -> of(inquiry, figures, harvest))
                .orElse(NOT_KNOWN);
    }

    /** Of several beds, the worst. */
    static Ground of(Inquiry inquiry, Figures figures, Done<Harvesting.Harvested> harvest) {
        return harvest.fact().beds().stream()
                .map(bed -> of(inquiry, figures, bed, harvest.day()))
                .max(Comparator.naturalOrder())
                .orElse(NOT_KNOWN);
    }

    private static Ground of(Inquiry inquiry, Figures figures, BedId bed, LocalDate day) {
        @Nullable FieldId field = inquiry.farm().bed(bed).on(day).field();
        if (field == null) {
            return NOT_KNOWN;
        }
        return LandHistory.of(inquiry, figures, field)
                .eligibleFrom(day)
                .map(from -> day.isBefore(from) ? NOT_CLEAN : CLEAN)
                .orElse(NOT_KNOWN);
    }
}

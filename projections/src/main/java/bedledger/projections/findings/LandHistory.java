package bedledger.projections.findings;

import bedledger.language.FieldId;
import bedledger.language.Land;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What was declared of one field by the day asked about. A declaration speaks of the days before it, whenever it was made. */
record LandHistory(FieldId field, List<Done<Land.LandUseDeclared>> declared, int years, boolean sameDate) {

    static LandHistory of(Inquiry inquiry, Figures figures, FieldId field) {
        return new LandHistory(
                field,
                inquiry.done(field, Land.LandUseDeclared.class),
                figures.whole("land.years"),
                inquiry.is(Reading.LAND_CLEAN_FROM_SAME_DATE));
    }

    /** The last day a prohibited substance is declared for, among the days up to one. */
    Optional<LocalDate> lastApplied(LocalDate upTo) {
        return declared.stream()
                .flatMap(done -> Optional.ofNullable(done.fact().lastApplied()).stream())
                .filter(day -> !day.isAfter(upTo))
                .max(Comparator.naturalOrder());
    }

    /** The earliest day since when nothing prohibited is declared. */
    Optional<LocalDate> noneSince() {
        return declared.stream()
                .flatMap(done -> Optional.ofNullable(done.fact().noneSince()).stream())
                .min(Comparator.naturalOrder());
    }

    /** The first day of an organic harvest after a prohibited substance. A day that the later year does not have becomes the next day. */
    LocalDate cleanFrom(LocalDate applied) {
        LocalDate later = applied.plusYears(years);
        boolean shortened = later.getDayOfMonth() != applied.getDayOfMonth();
        return sameDate && !shortened ? later : later.plusDays(1);
    }

    /** Since when the land is shown to be clean, as declared; empty if nothing shows it. */
    Optional<LocalDate> eligibleFrom(LocalDate asOf) {
        return lastApplied(asOf).or(this::noneSince).map(this::cleanFrom);
    }

    List<Long> entries() {
        return declared.stream().map(Done::number).toList();
    }
}

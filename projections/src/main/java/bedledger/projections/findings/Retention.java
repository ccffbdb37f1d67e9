package bedledger.projections.findings;

import bedledger.language.Entry;
import bedledger.language.Farm;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;

/**
 * How long a record is to be kept: so many years from when it was made, whatever day it speaks of.
 *
 * @param years of the rule that asks longest
 */
public record Retention(int years) {
    /** The longest of the figures whose name begins with {@code retention.}. */
    public static Retention of(Figures figures) {
        return new Retention(figures.byName().keySet().stream()
                .filter(name -> name.startsWith("retention."))
                .map(figures::whole)
                .max(Comparator.naturalOrder())
                .orElseThrow());
    }

    /** The first day on which it may be let go of: the last day to keep it is the one before. */
    public LocalDate keepThrough(LocalDate made) {
        return made.plusYears(years);
    }

    /** An act is kept as long as the last entry that corrects or strikes it. */
    public LocalDate keepThrough(Farm farm, Entry entry, ZoneId zone) {
        return farm.written().stream()
                .filter(one -> one.act().equals(entry.act()))
                .map(one -> keepThrough(one.writtenAt().atZone(zone).toLocalDate()))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }
}

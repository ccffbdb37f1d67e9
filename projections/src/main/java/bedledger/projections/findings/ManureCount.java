package bedledger.projections.findings;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The days between working raw manure in and picking: a pick is late enough if the two dates are that many calendar days apart.
 *
 * <p>The rule does not say how to count; this is the plain difference of the dates.
 *
 * @param soil days where the edible part touches the soil
 * @param clear days where it does not
 */
public record ManureCount(int soil, int clear) {
    public static ManureCount of(Figures figures) {
        return new ManureCount(figures.whole("manure.days.soil"), figures.whole("manure.days.clear"));
    }

    public int asked(Contact contact) {
        return contact == Contact.CLEAR ? clear : soil;
    }

    public LocalDate earliestPick(LocalDate workedIn, Contact contact) {
        return workedIn.plusDays(asked(contact));
    }

    /** For planning backwards: the last day to work manure in for a pick on a day. */
    public LocalDate lastWorkingIn(LocalDate pick, Contact contact) {
        return pick.minusDays(asked(contact));
    }

    static long days(LocalDate workedIn, LocalDate pick) {
        return ChronoUnit.DAYS.between(workedIn, pick);
    }
}

package bedledger.projections.nitrogen;

import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.Parameters;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Figures of one residue, each with all its causes of doubt: its mass and make-up, soil moisture, tarp, share worked in. */
final class ResidueFigures {
    /** How every figure here was come by. */
    static final String METHOD = "residue module of STICS v8 (Nicolardot et al. 2001; Brisson et al. 2009)";

    private static final double SQUARE_METRES_IN_A_HECTARE = 10_000;
    private static final double KILOGRAMS_IN_A_TONNE = 1000;

    private final Course course;
    private final Estimate moisture;
    private final Estimate warming;
    private final double tarpMoisture;
    private final double inContact;

    ResidueFigures(Parameters table) {
        this.course = new Course(table);
        this.moisture = Derived.of(table.get("soil moisture", "factor in an open bed"));
        this.warming = Derived.of(table.get("tarp", "warmer by"));
        this.tarpMoisture = table.value("soil moisture", "factor under a tarp");
        this.inContact = table.value("both", "mulch in contact");
    }

    boolean isCapped(double ratio) {
        return course.isCapped(ratio);
    }

    int daysWithoutWeather(ResidueCase residue, LocalDate until) {
        return residue.clock().passed(residue.day(), until).unknown();
    }

    Estimate normalisedDays(ResidueCase residue, LocalDate until) {
        BedClock.Passed passed = residue.clock().passed(residue.day(), until);
        return Derived.from(
                        List.of(moisture, warming),
                        "normalised days",
                        part -> passed.at(part[0], tarpMoisture, part[1]))
                .by("warmth of STICS v8 summed over the days x moisture");
    }

    /** kg N from the return to the end of a day. */
    Estimate freed(ResidueCase residue, LocalDate until) {
        Passing passing = passing(residue, until);
        return figure(residue, part -> passing.freed(residue, part, course.of(part[1])));
    }

    /** kg N from the end of one day to the end of another. */
    Estimate freedBetween(ResidueCase residue, LocalDate from, LocalDate until) {
        Passing before = passing(residue, from);
        Passing after = passing(residue, until);
        return figure(residue, part -> {
            Course.Residue decays = course.of(part[1]);
            return after.freed(residue, part, decays) - before.freed(residue, part, decays);
        });
    }

    /** kg N set free on the days of such ground, spans on which it is locked up left out. */
    Estimate freedOn(ResidueCase residue, List<Span> spans, Predicate<Ground> on) {
        List<Passing[]> ends = spans.stream()
                .filter(span -> on.test(span.ground()))
                .map(span -> new Passing[] {passing(residue, span.after()), passing(residue, span.until())})
                .toList();
        return figure(residue, part -> {
            Course.Residue decays = course.of(part[1]);
            double sum = 0;
            for (Passing[] each : ends) {
                sum += Math.max(0, each[1].freed(residue, part, decays) - each[0].freed(residue, part, decays));
            }
            return sum;
        });
    }

    /** kg N when everything has turned over. */
    Estimate inTheEnd(ResidueCase residue) {
        return figure(
                residue,
                part -> part[0]
                        * course.of(part[1])
                                .share(
                                        residue.workedIn().isPresent() ? 0 : Course.FOREVER,
                                        residue.workedIn().isPresent() ? Course.FOREVER : 0,
                                        part[5],
                                        contact(residue, part[2])));
    }

    private static Estimate figure(ResidueCase residue, ToDoubleFunction<double[]> working) {
        return residue.parts().work("kg", working);
    }

    /** Nitrogen kg, C:N, dry kg, moisture, warming under a tarp, share worked in. */
    Derived.Parts parts(Estimate nitrogen, Estimate ratio, Estimate dry, Estimate buried) {
        return Derived.parts(List.of(nitrogen, ratio, dry, moisture, warming, buried))
                .by(METHOD);
    }

    private Passing passing(ResidueCase residue, LocalDate until) {
        LocalDate turn = residue.onTopUntil(until);
        return new Passing(
                residue.clock().passed(residue.day(), turn), residue.clock().passed(turn, until));
    }

    private double contact(ResidueCase residue, double dryKilograms) {
        double atATime = inContact * KILOGRAMS_IN_A_TONNE * residue.squareMetres() / SQUARE_METRES_IN_A_HECTARE;
        return dryKilograms <= 0 || atATime <= 0 ? 1 : Math.min(1, atATime / dryKilograms);
    }

    /** The time a residue has had, on top and since it was worked in. */
    private final class Passing {
        private final BedClock.Passed onTop;
        private final BedClock.Passed since;

        Passing(BedClock.Passed onTop, BedClock.Passed since) {
            this.onTop = onTop;
            this.since = since;
        }

        double freed(ResidueCase residue, double[] part, Course.Residue decays) {
            return part[0]
                    * decays.share(
                            onTop.at(part[3], tarpMoisture, part[4]),
                            since.at(part[3], tarpMoisture, part[4]),
                            part[5],
                            contact(residue, part[2]));
        }
    }
}

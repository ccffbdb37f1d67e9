package bedledger.projections.breakdown;

import bedledger.projections.weather.Coverage;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * When a bed is ready for a use, by the model.
 *
 * @param cover the share of the bed that may be covered
 * @param earliest the likely date with every known doubt on the fast side
 * @param likely empty if it is not reached within the days looked ahead
 * @param latest with every known doubt on the slow side; empty if it is not reached within the days looked ahead
 * @param held whether it is the wait after worked-in green matter that decides, not the cover
 * @param doubts what moves the date most, worst first
 * @param coverage what weather the days up to the likely date rest on
 */
public record ReadyDate(
        Use use,
        double cover,
        LocalDate earliest,
        Optional<LocalDate> likely,
        Optional<LocalDate> latest,
        boolean held,
        List<String> doubts,
        Coverage coverage) {
    /** How the three dates are come by. */
    public static final String METHOD =
            "Earliest and latest: each known doubt is moved alone to either end of its range, and the mass on the bed worked"
                    + " out again; as factors (logarithms) they are squared, added and rooted. Treating them as"
                    + " independent is a judgement.";

    public ReadyDate {
        doubts = List.copyOf(doubts);
    }

    /** Such as "2025-08-20 (2025-08-02 to 2025-10-11)". */
    public String words() {
        return likely.map(LocalDate::toString).orElse(open()) + " (" + earliest + " to "
                + latest.map(LocalDate::toString).orElse(open()) + ")";
    }

    private static String open() {
        return "not within " + Constants.count("horizon") / 365 + " years";
    }
}

package bedledger.projections.due;

import bedledger.projections.findings.EarliestHarvest;
import bedledger.projections.findings.Wait;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** How a wait before a harvest is put into words, wherever it is said. */
public final class PickWords {
    static final String SPRAY = "spray-interval";
    static final String RE_ENTRY = "re-entry";

    private static final int NAMED = 12;

    /** What binds whoever eats or picks it, sold as organic or not. */
    private static final Set<String> WHATEVER_IT_IS_SOLD_AS = Set.of(SPRAY, RE_ENTRY);

    /** "carrot in N1 cannot be cut as organic before 2026-08-08"; of a crop that is not free. */
    public static String says(String what, EarliestHarvest harvest) {
        boolean anyway = WHATEVER_IT_IS_SOLD_AS.contains(harvest.waits().get(0).rule());
        String cannot = what + " cannot be cut" + (anyway ? "" : " as organic");
        return harvest.day()
                .map(day -> cannot + " before " + day)
                .orElse(cannot + ", and no day is in sight as the record stands");
    }

    /** Every reason with the entries and the text behind it. */
    public static String why(List<Wait> waits) {
        return waits.stream().map(PickWords::why).collect(Collectors.joining(" "));
    }

    private static String why(Wait wait) {
        return wait.why() + " [" + numbers(wait.entries()) + (wait.entries().isEmpty() ? "" : "; ") + wait.citation()
                + "]";
    }

    /** "#3 #5", of very many the first and how many more; empty if there are none. */
    public static String numbers(List<Long> entries) {
        String first = entries.stream().limit(NAMED).map(number -> "#" + number).collect(Collectors.joining(" "));
        return entries.size() <= NAMED ? first : first + " and " + (entries.size() - NAMED) + " more";
    }

    private PickWords() {}
}

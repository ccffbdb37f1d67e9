package bedledger.projections.soil;

import bedledger.projections.returned.Options;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** The seasons over which a yearly mean is taken: whole ones, as far as the book has any. */
record Seasons(int first, int last, boolean whole) {
    static Seasons of(Options options, @Nullable LocalDate laidOut, LocalDate asOf) {
        int now = year(options.season(asOf));
        boolean over = year(options.season(asOf.plusDays(1))) > now;
        int first = laidOut == null ? now : year(options.season(laidOut));
        int last = over ? now : now - 1;
        return last < first ? new Seasons(now, now, false) : new Seasons(first, last, true);
    }

    private static int year(String season) {
        return Integer.parseInt(season.replaceAll("/.*", ""));
    }

    boolean holds(String season) {
        int year = year(season);
        return first <= year && year <= last;
    }

    int count() {
        return last - first + 1;
    }

    String words() {
        return (first == last ? "" + first : first + " to " + last) + (whole ? "" : " (not over yet)");
    }
}

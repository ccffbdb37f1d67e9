package bedledger.projections.findings;

import bedledger.language.LotId;
import bedledger.language.NaturalOrder;
import bedledger.language.Place;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** How findings put things into words. */
final class Wording {
    static final Comparator<Place> NATURAL = Comparator.<Place, String>comparing(Place::toString, NaturalOrder.INSTANCE)
            .thenComparing(Place::key);

    static <P extends Place> List<P> sorted(Collection<P> places) {
        return places.stream().distinct().sorted(NATURAL).toList();
    }

    static String list(Collection<? extends Place> places) {
        return sorted(List.<Place>copyOf(places)).stream().map(Place::toString).collect(Collectors.joining(", "));
    }

    /** "lot 2025/CAR-0901" or "lots 2025/CAR-0901, 2025/CAR-0908"; "no lot so far" if there are none. */
    static String lots(Collection<LotId> lots) {
        return switch (lots.size()) {
            case 0 -> "no lot so far";
            case 1 -> "lot " + list(lots);
            default -> "lots " + list(lots);
        };
    }

    static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    static String days(long number) {
        return number == 1 ? "1 day" : number + " days";
    }

    static String times(long number) {
        return number == 1 ? "1 time" : number + " times";
    }

    static String turns(long number) {
        return number == 1 ? "1 turn" : number + " turns";
    }

    private Wording() {}
}

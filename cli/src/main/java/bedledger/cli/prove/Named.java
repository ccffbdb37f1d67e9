package bedledger.cli.prove;

import bedledger.language.BookKeeping;
import bedledger.language.CropName;
import bedledger.language.Farm;
import bedledger.language.NaturalOrder;
import bedledger.language.Place;
import java.util.Comparator;
import java.util.List;

/** What a book has names for. */
final class Named {
    /** The crops that the book added to the tables. */
    static List<CropName> crops(Farm farm) {
        return farm.ofKind(BookKeeping.CropAdded.class).stream()
                .map(entry -> ((BookKeeping.CropAdded) entry.fact()).crop())
                .distinct()
                .toList();
    }

    /** The places of one kind, in natural order. */
    static <P extends Place> List<P> places(Farm farm, Class<P> kind) {
        return farm.places().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .sorted(Comparator.comparing(Place::toString, NaturalOrder.INSTANCE))
                .toList();
    }

    private Named() {}
}

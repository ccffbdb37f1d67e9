package bedledger.projections.history;

import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.Entry;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A crop or cover crop in one bed, from planting to its end.
 *
 * @param squareMetres area of the bed top while it stood
 * @param plantings the entries that put it there; the first is a <i>found</i> entry where its planting is not in the book
 * @param harvests the harvests of it that fit, in the order of the work
 * @param end what ended it: last harvest, finished, cover crop ended, or a standing crop worked in; empty while it stands
 */
public record Cropping(
        BedId bed,
        CropName crop,
        boolean cover,
        double squareMetres,
        List<Entry> plantings,
        List<Entry> harvests,
        Optional<Entry> end) {
    public Cropping {
        plantings = List.copyOf(plantings);
        harvests = List.copyOf(harvests);
        if (plantings.isEmpty()) {
            throw new IllegalArgumentException("a cropping begins with an entry");
        }
    }

    /** The number of the entry it began with; with the bed, its identity. */
    public long planted() {
        return plantings.get(0).number();
    }

    public LocalDate since() {
        return plantings.get(0).head().doneOn();
    }

    public Optional<LocalDate> ended() {
        return end.map(entry -> entry.head().doneOn());
    }
}

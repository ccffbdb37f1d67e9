package bedledger.projections.tables;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A crop or cover crop under its plain name.
 *
 * <p>A mixture has several families. The citation stands for the soil-contact judgement; the EPPO code carries its own
 * status.
 */
public record Crop(
        String name,
        List<String> aliases,
        String botanicalName,
        List<String> families,
        Kind kind,
        @Nullable EppoCode eppo,
        SoilContact edibleTouchesSoil,
        Citation citation) {
    /** Whether it is grown to be sold or to feed the soil. */
    public enum Kind {
        VEGETABLE,
        COVER
    }

    public Crop {
        aliases = List.copyOf(aliases);
        families = List.copyOf(families);
        if (name.isBlank() || families.isEmpty()) {
            throw new IllegalArgumentException("a crop has a name and at least one family");
        }
    }
}

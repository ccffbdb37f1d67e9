package bedledger.projections.findings;

import bedledger.language.CropName;
import java.util.Optional;
import java.util.Set;

/** What the rules ask of the tables; crops added in the book itself are looked up here only where this knows nothing. */
public interface CropFacts {
    /** The botanical families; several for a mix, none if not known. */
    Set<String> families(CropName crop);

    Contact contact(CropName crop);

    /** Total nitrogen of a manure or compost; empty where no table has it. */
    default Optional<Content> nitrogen(String material) {
        return Optional.empty();
    }
}

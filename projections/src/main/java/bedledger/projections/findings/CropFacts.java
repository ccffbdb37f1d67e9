package bedledger.projections.findings;

import bedledger.language.CropName;
import bedledger.language.Fertility;
import java.util.Optional;
import java.util.Set;

/** What the rules ask of the tables; crops added in the book itself are looked up here only where this knows nothing. */
public interface CropFacts {
    /** The botanical families; several for a mix, none if not known. */
    Set<String> families(CropName crop);

    Contact contact(CropName crop);

    /** The C:N that a pile's feedstocks come to, with its range, in words; empty where it cannot be told. */
    default Optional<String> mixed(Fertility.PileBuilt built) {
        return Optional.empty();
    }

    /** Total nitrogen of a manure or compost; empty where no table has it. */
    default Optional<Content> nitrogen(String material) {
        return Optional.empty();
    }
}

package bedledger.projections.findings;

import bedledger.language.CropName;
import java.util.Set;

/** What the rules ask of the crop tables; crops added in the book itself are looked up here only where this knows nothing. */
public interface CropFacts {
    /** The botanical families; several for a mix, none if not known. */
    Set<String> families(CropName crop);

    Contact contact(CropName crop);
}

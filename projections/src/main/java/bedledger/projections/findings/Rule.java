package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.CropName;
import java.util.List;

/** One rule of a book: pure, and the same for the same record however it is handed in. */
public interface Rule {
    RuleSheet sheet();

    List<Finding> judge(Inquiry inquiry);

    /** From when on a crop may be harvested from a bed without a finding of this rule; empty if it asks for no waiting. */
    default List<Wait> waits(Inquiry inquiry, BedId bed, CropName crop) {
        return List.of();
    }

    /** What this rule would hold against planting a crop in a bed on the day asked; empty if nothing. */
    default List<Doubt> doubts(Inquiry inquiry, BedId bed, CropName crop) {
        return List.of();
    }
}

package bedledger.projections.returned;

import bedledger.language.Entry;
import bedledger.language.WorkOrder;
import bedledger.projections.history.Cropping;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A cropping with what is on record about its residue, in the order of the work. */
final class CropCase {
    final Cropping cropping;
    final List<Entry> hauls = new ArrayList<>();
    final List<Entry> cutBefore = new ArrayList<>();
    final List<Entry> cutAfter = new ArrayList<>();
    final List<String> remarks = new ArrayList<>();
    /** What broke the residue up or worked it in: the end itself, or the first such work after it. */
    Optional<Entry> shredded = Optional.empty();

    CropCase(Cropping cropping) {
        this.cropping = cropping;
    }

    /** The quadrats that stand for what was returned: the last that were cut. */
    Optional<Entry> quadrats() {
        return cutBefore.isEmpty() ? Optional.empty() : Optional.of(cutBefore.get(cutBefore.size() - 1));
    }

    /** What was hauled off and is not already missing from the quadrats that are used. */
    List<Entry> haulsToSubtract() {
        return quadrats()
                .map(cut -> hauls.stream()
                        .filter(haul -> WorkOrder.OF_WORK.compare(haul, cut) > 0)
                        .toList())
                .orElse(hauls);
    }
}

package bedledger.projections.returned;

import bedledger.language.Entry;
import bedledger.projections.tables.Quantity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts the ended croppings of all beds into groups that are estimated together. */
final class CropGroups {
    private record Key(int together, Evidence evidence, LocalDate ended, List<Long> hauls, int alone) {}

    private final Basis basis;
    private final List<CropCase> cases;
    private final int[] leader;

    CropGroups(Basis basis, List<CropCase> cases) {
        this.basis = basis;
        this.cases = cases;
        this.leader = new int[cases.size()];
        for (int at = 0; at < leader.length; at++) {
            leader[at] = at;
        }
        join();
    }

    /** Beds named by one harvest of a crop belong together, and so does what is joined through other harvests. */
    private void join() {
        Map<Long, Integer> byHarvest = new HashMap<>();
        for (int at = 0; at < leader.length; at++) {
            for (Entry harvest : cases.get(at).cropping.harvests()) {
                Integer other = byHarvest.putIfAbsent(harvest.number(), at);
                if (other != null) {
                    int high = Math.max(lead(at), lead(other));
                    leader[high] = Math.min(lead(at), lead(other));
                }
            }
        }
    }

    private int lead(int at) {
        int up = at;
        while (leader[up] != up) {
            up = leader[up];
        }
        return up;
    }

    List<CropGroup> groups() {
        Map<Key, List<CropCase>> grouped = new LinkedHashMap<>();
        for (int at = 0; at < leader.length; at++) {
            CropCase each = cases.get(at);
            if (each.cropping.end().isPresent()) {
                grouped.computeIfAbsent(key(at, each), key -> new ArrayList<>()).add(each);
            }
        }
        List<CropGroup> groups = new ArrayList<>();
        grouped.forEach((key, together) -> groups.add(new CropGroup(basis, together, key.evidence())));
        return groups;
    }

    private Key key(int at, CropCase each) {
        Evidence evidence = evidence(each);
        return new Key(
                lead(at),
                evidence,
                each.cropping.ended().orElseThrow(),
                each.haulsToSubtract().stream().map(Entry::number).toList(),
                evidence == Evidence.QUADRATS ? at : -1);
    }

    private Evidence evidence(CropCase each) {
        if (!each.cutBefore.isEmpty()) {
            return Evidence.QUADRATS;
        }
        if (!each.cropping.harvests().isEmpty()) {
            return Evidence.FROM_YIELD;
        }
        Quantity typical = each.cropping.cover() ? Quantity.TYPICAL_COVER_MASS : Quantity.TYPICAL_YIELD;
        boolean known =
                basis.tables.coefficient(each.cropping.crop().name(), typical).isPresent();
        return known ? Evidence.TYPICAL : Evidence.NONE;
    }
}

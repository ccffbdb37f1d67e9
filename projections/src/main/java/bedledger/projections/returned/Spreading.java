package bedledger.projections.returned;

import bedledger.language.Amount;
import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.history.BedAreas;
import bedledger.projections.tables.Coefficient;
import bedledger.projections.tables.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One piece of something spread on beds: a recorded quantity, each bed's share, and what is in it. */
final class Spreading {
    private final Basis basis;
    private final Entry entry;
    private final List<BedId> beds;
    private final boolean onEachBed;
    private final Working working = new Working();

    /** {@code beds} are those of the entry that are to be counted; {@code onEachBed} if its quantity is per bed. */
    Spreading(Basis basis, Entry entry, List<BedId> beds, boolean onEachBed) {
        this.basis = basis;
        this.entry = entry;
        this.beds = beds;
        this.onEachBed = onEachBed;
        working.behind(entry);
    }

    Working working() {
        return working;
    }

    Return piece(SourceKind kind, String material, @Nullable Amount amount, Content content) {
        String plain = basis.tables.material(material).orElse(material);
        Matter matter = kilograms(amount)
                .map(fresh -> content.of(plain, fresh, basis, working))
                .orElse(Matter.UNKNOWN);
        return piece(kind, plain, matter);
    }

    /** The piece with what is known of it, which may be nothing. */
    Return piece(SourceKind kind, String plain, Matter matter) {
        return new Return(
                kind,
                plain,
                entry.head().doneOn(),
                shares(),
                Evidence.RECORDED_QUANTITY,
                matter,
                working.missing(),
                working.remarks(),
                "recorded quantity x composition"
                        + matter.dry()
                                .map(each -> each.grounds().methods())
                                .filter(each -> !each.isEmpty())
                                .map(each -> ": " + String.join("; ", each))
                                .orElse(""),
                used(plain, matter),
                List.of(),
                List.of(),
                working.entries());
    }

    private List<BedShare> shares() {
        double all =
                beds.stream().mapToDouble(bed -> basis.areas.share(entry, bed)).sum();
        boolean byArea = !onEachBed && BedAreas.beds(entry).size() > 1;
        if (byArea) {
            working.remark("spread over " + beds.stream().map(BedId::name).collect(Collectors.joining(" "))
                    + " together, shared by area");
        }
        return beds.stream()
                .map(bed -> new BedShare(
                        bed,
                        basis.areas.squareMetres(bed, entry.head().doneOn()),
                        byArea ? basis.areas.share(entry, bed) / all : 1.0 / beds.size(),
                        byArea))
                .toList();
    }

    private Optional<Double> kilograms(@Nullable Amount amount) {
        if (amount == null) {
            working.missing("how much was spread (#" + entry.number() + ")");
            return Optional.empty();
        }
        if (!amount.isWeight()) {
            working.missing("the weight of " + amount + " (#" + entry.number()
                    + "): no bulk density is on record; weigh a bucket of it");
            return Optional.empty();
        }
        double part = onEachBed
                ? beds.size()
                : beds.stream()
                        .mapToDouble(bed -> basis.areas.share(entry, bed))
                        .sum();
        return Optional.of(amount.kilograms() * part);
    }

    private List<Coefficient> used(String material, Matter matter) {
        Set<String> causes = matter.estimates()
                .map(Estimate::deviations)
                .flatMap(each -> each.keySet().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        return Arrays.stream(Quantity.values())
                .flatMap(quantity -> basis.tables.coefficient(material, quantity).stream())
                .filter(each -> causes.contains(each.key()))
                .toList();
    }
}

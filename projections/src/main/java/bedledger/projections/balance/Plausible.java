package bedledger.projections.balance;

import bedledger.language.Amount;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Planting;
import bedledger.language.Unit;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.history.Cropping;
import bedledger.projections.history.Croppings;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Tables;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * From seed to sale: whether what was sown, the area, a typical yield of it and the harvest hang together.
 *
 * @param squareMetres of bed tops on which the crop stood in the period, each cropping once
 * @param typical the yield of that area by the table, kg; empty where the table has none
 */
public record Plausible(List<Start> starts, double squareMetres, List<String> beds, Optional<Estimate> typical) {
    /** A sowing or planting, and how much seed or how many plants it says. */
    public record Start(long entry, LocalDate day, String words) {}

    public Plausible {
        starts = List.copyOf(starts);
        beds = List.copyOf(beds);
    }

    public static Plausible of(Farm farm, Tables tables, CropName crop, LocalDate from, LocalDate to) {
        List<Cropping> croppings = Croppings.of(farm, to).stream()
                .filter(cropping -> !cropping.cover() && cropping.crop().equals(crop))
                .filter(cropping ->
                        cropping.ended().filter(end -> end.isBefore(from)).isEmpty())
                .toList();
        double area = croppings.stream().mapToDouble(Cropping::squareMetres).sum();
        Set<Entry> plantings = new LinkedHashSet<>();
        croppings.forEach(cropping -> plantings.addAll(cropping.plantings()));
        return new Plausible(
                plantings.stream().map(Plausible::start).toList(),
                area,
                croppings.stream()
                        .map(cropping -> cropping.bed().name())
                        .distinct()
                        .toList(),
                typical(tables, crop, area));
    }

    private static Optional<Estimate> typical(Tables tables, CropName crop, double squareMetres) {
        double acres = squareMetres / Unit.ACRE.factor().doubleValue();
        double kilogramsInAPound =
                Unit.LB.factor().divide(BigDecimal.valueOf(1000)).doubleValue();
        return squareMetres <= 0
                ? Optional.empty()
                : tables.coefficient(crop.name(), Quantity.TYPICAL_YIELD)
                        .map(yield -> Estimate.exact(acres * kilogramsInAPound, "kg")
                                .times(Estimate.share(yield))
                                .by("typical yield of fields, by area of the bed tops"));
    }

    private static Start start(Entry entry) {
        return new Start(entry.number(), entry.head().doneOn(), words(entry.fact()));
    }

    private static String words(Fact fact) {
        List<String> said = new ArrayList<>();
        if (fact instanceof Planting.Sown sown) {
            said.add("sown in " + names(sown.beds()));
            said.add(sown.seedLot() == null ? "seed lot not recorded" : "seed lot " + sown.seedLot());
            said.add(amount(sown));
        } else if (fact instanceof Planting.Transplanted set) {
            said.add("planted in " + names(set.beds()));
            said.add(set.trays().isEmpty() ? "trays not recorded" : "trays " + names(set.trays()));
            said.add(set.plants() == null ? "number of plants not recorded" : set.plants() + " plants");
        } else {
            said.add("found standing");
        }
        return String.join("; ", said);
    }

    private static String amount(Planting.Sown sown) {
        Amount amount = sown.quantity() == null ? sown.perBed() : sown.quantity();
        return amount == null ? "amount not recorded" : amount + (sown.quantity() == null ? " a bed" : "");
    }

    private static String names(List<?> things) {
        return String.join(" ", things.stream().map(Object::toString).toList());
    }
}

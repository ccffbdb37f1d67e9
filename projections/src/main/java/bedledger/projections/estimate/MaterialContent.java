package bedledger.projections.estimate;

import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Tables;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a mass of manure, compost or straw brings, kg; empty where the tables hold nothing, with the gap named.
 *
 * <p>Phosphorus as P. A composition given per tonne fresh holds at the table's dry share; for a material drier or wetter
 * than that it is taken along with the dry mass.
 */
public record MaterialContent(
        Optional<Estimate> dry,
        Optional<Estimate> carbon,
        Optional<Estimate> nitrogen,
        Optional<Estimate> phosphorus,
        List<String> missing) {
    public MaterialContent {
        missing = List.copyOf(missing);
    }

    /** Content of a fresh mass, at the dry share measured or else the table's. */
    public static MaterialContent of(
            String material, double freshKilograms, Optional<DryShare> measured, Tables tables) {
        Estimate fresh = Estimate.exact(freshKilograms, "kg");
        Optional<Estimate> tableDry = share(tables, material, Quantity.DRY_SHARE);
        Optional<Estimate> dry = measured.map(each -> fresh.times(each.value()))
                .or(() -> tableDry.map(fresh::times))
                .map(each -> each.by(
                        measured.isPresent()
                                ? "fresh mass x dry share as measured"
                                : "fresh mass x dry share from the table"));
        Optional<Estimate> carbon = times(dry, share(tables, material, Quantity.CARBON_OF_DRY));
        Optional<Estimate> nitrogen = times(dry, share(tables, material, Quantity.NITROGEN_OF_DRY))
                .or(() -> times(dry, ofDry(tables, material, Quantity.NITROGEN_PER_TONNE_FRESH)));
        Optional<Estimate> phosphorus = times(dry, ofDry(tables, material, Quantity.PHOSPHATE_PER_TONNE_FRESH))
                .map(each -> each.times(Tables.sampling().phosphorusInPhosphate()));
        return new MaterialContent(
                dry, carbon, nitrogen, phosphorus, gaps(material, dry, carbon, nitrogen, phosphorus));
    }

    private static Optional<Estimate> ofDry(Tables tables, String material, Quantity perTonneFresh) {
        return share(tables, material, perTonneFresh)
                .flatMap(content -> share(tables, material, Quantity.DRY_SHARE).map(content::dividedBy));
    }

    private static Optional<Estimate> share(Tables tables, String material, Quantity quantity) {
        return tables.coefficient(material, quantity).map(Estimate::share);
    }

    private static Optional<Estimate> times(Optional<Estimate> mass, Optional<Estimate> share) {
        return mass.flatMap(each -> share.map(each::times));
    }

    private static List<String> gaps(
            String material,
            Optional<Estimate> dry,
            Optional<Estimate> carbon,
            Optional<Estimate> nitrogen,
            Optional<Estimate> phosphorus) {
        List<String> gaps = new ArrayList<>();
        note(gaps, material + " dry share", dry);
        note(gaps, material + " carbon", carbon);
        note(gaps, material + " nitrogen", nitrogen);
        note(gaps, material + " phosphorus", phosphorus);
        return gaps;
    }

    private static void note(List<String> gaps, String name, Optional<Estimate> part) {
        if (part.isEmpty()) {
            gaps.add(name);
        }
    }
}

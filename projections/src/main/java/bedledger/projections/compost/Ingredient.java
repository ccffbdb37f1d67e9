package bedledger.projections.compost;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.Coefficient;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One ingredient as it is reckoned with.
 *
 * @param said as it was said, such as "grass clippings 10 kg 77 % water"
 * @param kilograms fresh; empty where no weight is known
 * @param water kg per kg fresh
 * @param carbon kg per kg dry
 * @param nitrogen kg per kg dry
 * @param from the rows of the tables, or own values, behind what was not said
 */
public record Ingredient(
        String name,
        String said,
        Optional<Estimate> kilograms,
        Optional<Estimate> water,
        Optional<Estimate> carbon,
        Optional<Estimate> nitrogen,
        List<Coefficient> from) {
    public Ingredient {
        from = List.copyOf(from);
    }

    /** What is not known of it, each as a phrase. */
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        name(missing, "weight", kilograms);
        name(missing, "water", water);
        name(missing, "carbon", carbon);
        name(missing, "nitrogen", nitrogen);
        return List.copyOf(missing);
    }

    private void name(List<String> missing, String what, Optional<Estimate> figure) {
        if (figure.isEmpty()) {
            missing.add(what + " of " + name);
        }
    }

    /** Its own C:N; empty where C or N is not known, or it holds no N. */
    public Optional<Estimate> carbonToNitrogen() {
        return carbon.flatMap(each -> nitrogen.filter(under -> under.best() > 0).map(under -> each.ratioTo(under, "")));
    }

    Ingredient weighing(Estimate mass) {
        return new Ingredient(name, said, Optional.of(mass), water, carbon, nitrogen, from);
    }
}

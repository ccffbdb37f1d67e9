package bedledger.projections.compost;

import bedledger.language.Feedstock;
import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.Tables;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A mix of ingredients.
 *
 * @param kilograms fresh; like the other two empty where anything is missing
 * @param water kg per kg fresh
 * @param carbonToNitrogen also empty where nothing in it holds nitrogen
 * @param missing what would complete it
 */
public record Blend(
        List<Ingredient> ingredients,
        Optional<Estimate> kilograms,
        Optional<Estimate> water,
        Optional<Estimate> carbonToNitrogen,
        List<String> missing) {
    public Blend {
        ingredients = List.copyOf(ingredients);
        missing = List.copyOf(missing);
    }

    /** The mix of these feedstocks, by what is said of them and the tables. */
    public static Blend of(List<Feedstock> feedstocks, Tables tables) {
        return of(feedstocks.stream().map(each -> Ingredients.of(each, tables)).toList());
    }

    static Blend of(List<Ingredient> ingredients) {
        List<String> missing =
                ingredients.stream().flatMap(each -> each.missing().stream()).toList();
        Optional<Derived.Parts> parts =
                Mixing.parts(ingredients).filter(figures -> mass(figures) > 0).map(Derived::parts);
        return new Blend(
                ingredients,
                parts.map(each -> each.work("kg", Mixing::mass)),
                parts.map(each -> each.by(Mixing.WATER).work("kg/kg", Mixing::water)),
                parts.filter(each -> holdsNitrogen(ingredients))
                        .map(each -> each.by(Mixing.RATIO).work("", Mixing::ratio)),
                missing);
    }

    private static double mass(List<Estimate> figures) {
        return Mixing.mass(figures.stream().mapToDouble(Estimate::best).toArray());
    }

    private static boolean holdsNitrogen(List<Ingredient> ingredients) {
        double[] best = Mixing.parts(ingredients).orElseThrow().stream()
                .mapToDouble(Estimate::best)
                .toArray();
        return Double.isFinite(Mixing.ratio(best));
    }

    /** The same with so much of one more ingredient. */
    Blend with(Ingredient more) {
        return of(Stream.concat(ingredients.stream(), Stream.of(more)).toList());
    }

    /** The same where more went in without an amount: nothing can be said of the whole. */
    Blend lacking(List<String> unweighed) {
        List<String> more = Stream.concat(missing.stream(), unweighed.stream().map(each -> "weight of " + each))
                .toList();
        return new Blend(ingredients, Optional.empty(), Optional.empty(), Optional.empty(), more);
    }
}

package bedledger.cli.read;

import bedledger.projections.compost.Addition;
import bedledger.projections.compost.Blend;
import bedledger.projections.compost.Ingredient;
import bedledger.projections.compost.Pile;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.Coefficient;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What {@code blend --json} prints; weights in kg, water, C and N as shares of 1. */
record BlendView(List<String> answers, String rule, List<MixView> mixes, List<AdditionView> additions) {
    /** A mix, of a pile on record or as said. */
    record MixView(
            @Nullable String pile,
            @Nullable String built,
            @Nullable Long entry,
            @Nullable String recordedCarbonToNitrogen,
            List<IngredientView> ingredients,
            @Nullable Sourced kilograms,
            @Nullable Sourced water,
            @Nullable Sourced carbonToNitrogen,
            List<String> missing) {
        static MixView of(@Nullable Pile pile, Blend mix) {
            return new MixView(
                    pile == null ? null : pile.pile().toString(),
                    pile == null ? null : pile.built().toString(),
                    pile == null ? null : pile.entry(),
                    pile == null ? null : pile.recorded().map(Object::toString).orElse(null),
                    mix.ingredients().stream().map(IngredientView::of).toList(),
                    Sourced.orNull(mix.kilograms()),
                    Sourced.orNull(mix.water()),
                    Sourced.orNull(mix.carbonToNitrogen()),
                    mix.missing());
        }
    }

    /** One ingredient. */
    record IngredientView(
            String name,
            String said,
            @Nullable Sourced kilograms,
            @Nullable Sourced water,
            @Nullable Sourced carbon,
            @Nullable Sourced nitrogen,
            List<String> from) {
        static IngredientView of(Ingredient ingredient) {
            return new IngredientView(
                    ingredient.name(),
                    ingredient.said(),
                    Sourced.orNull(ingredient.kilograms()),
                    Sourced.orNull(ingredient.water()),
                    Sourced.orNull(ingredient.carbon()),
                    Sourced.orNull(ingredient.nitrogen()),
                    ingredient.from().stream().map(Coefficient::inWords).toList());
        }

        Stream<String> cells() {
            return Stream.of(kilograms, water, carbon, nitrogen).flatMap(figure -> Sourced.cells(figure).stream());
        }
    }

    /** How much of one more ingredient. */
    record AdditionView(
            String goal,
            double wanted,
            IngredientView ingredient,
            @Nullable Sourced kilograms,
            @Nullable Sourced water,
            @Nullable Sourced carbonToNitrogen,
            @Nullable String none) {
        static AdditionView of(Addition addition) {
            return new AdditionView(
                    addition.goal().words(),
                    addition.wanted(),
                    IngredientView.of(addition.more()),
                    Sourced.orNull(addition.kilograms()),
                    Sourced.orNull(addition.mix().flatMap(Blend::water)),
                    Sourced.orNull(addition.mix().flatMap(Blend::carbonToNitrogen)),
                    addition.none().orElse(null));
        }
    }

    static BlendView of(List<String> answers, List<Pile> piles, List<Blend> mixes, List<Addition> additions) {
        return new BlendView(
                answers,
                Estimate.RULE,
                IntStream.range(0, mixes.size())
                        .mapToObj(at -> MixView.of(piles.isEmpty() ? null : piles.get(at), mixes.get(at)))
                        .toList(),
                additions.stream().map(AdditionView::of).toList());
    }

    /** A row for each ingredient, the one asked for included, with the amount for its goal. */
    Output.Table table() {
        List<String> header = new ArrayList<>(List.of("pile", "goal", "wanted", "ingredient"));
        for (String figure : List.of("kilograms", "water", "carbon", "nitrogen")) {
            header.addAll(List.of(figure + "_low", figure + "_best", figure + "_high"));
        }
        List<List<String>> rows = new ArrayList<>();
        for (MixView mix : mixes) {
            mix.ingredients()
                    .forEach(each -> rows.add(row(mix.pile() == null ? "" : mix.pile(), "", "", each.name(), each)));
        }
        for (AdditionView each : additions) {
            IngredientView one = each.ingredient();
            IngredientView weighed = new IngredientView(
                    one.name(), one.said(), each.kilograms(), one.water(), one.carbon(), one.nitrogen(), one.from());
            rows.add(row("", each.goal(), Double.toString(each.wanted()), one.name(), weighed));
        }
        return new Output.Table(header, rows);
    }

    private static List<String> row(String pile, String goal, String wanted, String name, IngredientView of) {
        return Stream.concat(Stream.of(pile, goal, wanted, name), of.cells()).toList();
    }
}

package bedledger.cli.read;

import bedledger.cli.BookPlace;
import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.language.BadValue;
import bedledger.language.Feedstock;
import bedledger.language.Ratio;
import bedledger.language.Share;
import bedledger.projections.compost.Addition;
import bedledger.projections.compost.Blend;
import bedledger.projections.compost.Goal;
import bedledger.projections.compost.Ingredient;
import bedledger.projections.compost.Ingredients;
import bedledger.projections.compost.Pile;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger blend}: water and C:N of a compost mix, and how much of one more ingredient brings it to a goal. */
@Command(
        name = "bedledger blend",
        sortOptions = false,
        description = {
            "Water and C:N of a compost mix before it is built, or of the piles on record;",
            "and how much of one more ingredient it wants. Estimates; a sample weighed and",
            "dried is worth more. What is said of an ingredient goes before the tables:",
            "water of fresh weight, C and N of dry weight."
        },
        footer = {
            "",
            "Examples: bedledger blend \"grass clippings 10kg 77%% water\" --with leaves",
            "          bedledger blend \"horse manure 300kg, straw 0.5m3\" --with water --water 55%%",
            "          bedledger blend --pile P1"
        })
public final class BlendCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(
            arity = "0..*",
            paramLabel = "INGREDIENT",
            description = "each with its weight or volume (the piles on record if left out)")
    List<String> ingredients = new ArrayList<>();

    @Option(names = "--pile", paramLabel = "PILE", description = "this pile on record, as it was built")
    @Nullable
    String pile;

    @Option(names = "--with", paramLabel = "INGREDIENT", description = "how much of this one more is wanted?")
    @Nullable
    String with;

    @Option(names = "--c-to-n", paramLabel = "RATIO", description = "the C:N to come to (the usual one if left out)")
    @Nullable
    String ratio;

    @Option(names = "--water", paramLabel = "SHARE", description = "the water to come to (the usual one if left out)")
    @Nullable
    String water;

    @Mixin
    ReadOptions options = new ReadOptions();

    public BlendCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        if (pile != null && !ingredients.isEmpty()) {
            throw new Failure(Exit.USAGE, "Give ingredients or --pile, not both.");
        }
        boolean needsBook = ingredients.isEmpty() || options.asksABook();
        ReadBook book = needsBook || BookPlace.isNear(around) ? ReadBook.open(around, options) : null;
        Tables tables = book == null ? Tables.bundled() : book.tables();
        List<Pile> piles = book == null || !ingredients.isEmpty() ? List.of() : piles(book, tables);
        if (with != null && ingredients.isEmpty() && pile == null) {
            throw new Failure(
                    Exit.USAGE, "--with is asked of one mix: say its ingredients, or name a pile with --pile.");
        }
        List<Feedstock> said = feedstocks();
        List<Blend> mixes = said.isEmpty() ? piles.stream().map(Pile::mix).toList() : List.of(Blend.of(said, tables));
        List<Addition> additions = mixes.isEmpty() ? List.of() : additions(mixes.get(0), tables);
        BlendText text = new BlendText(around, book, piles, mixes, additions);
        BlendView view = BlendView.of(text.answers(), piles, mixes, additions);
        return new Output(around, options).print(view, view.table(), out -> text.print());
    }

    private List<Pile> piles(ReadBook book, Tables tables) {
        List<Pile> all = Pile.of(book.farm(), tables, LocalDate.MAX);
        if (pile == null) {
            return all;
        }
        List<Pile> named = all.stream()
                .filter(each -> each.pile().toString().equalsIgnoreCase(pile))
                .toList();
        if (named.isEmpty()) {
            throw new Failure(
                    Exit.NO_INPUT,
                    "There is no pile '" + pile + "' in the book" + book.known() + "."
                            + (all.isEmpty()
                                    ? ""
                                    : " Its piles: "
                                            + String.join(
                                                    ", ",
                                                    all.stream()
                                                            .map(each ->
                                                                    each.pile().toString())
                                                            .toList())
                                            + "."));
        }
        return named;
    }

    private List<Feedstock> feedstocks() {
        return ingredients.stream()
                .flatMap(text -> Arrays.stream(text.split("[,;]", -1)))
                .filter(text -> !text.isBlank())
                .map(text -> read("ingredient", text, Feedstock::parse))
                .toList();
    }

    private List<Addition> additions(Blend mix, Tables tables) {
        Map<Goal, Double> goals = goals();
        if (with == null) {
            if (!goals.isEmpty()) {
                throw new Failure(
                        Exit.USAGE, "--c-to-n and --water are goals for one more ingredient: name it with --with.");
            }
            return List.of();
        }
        Feedstock more = read("with", with, Feedstock::parse);
        if (more.quantity() != null) {
            throw new Failure(
                    Exit.USAGE,
                    "--with '" + with + "': its amount is what is asked for. Leave the amount out, or give it as one"
                            + " of the ingredients.");
        }
        if (goals.isEmpty()) {
            for (Goal goal : Goal.values()) {
                goals.put(goal, goal.usual());
            }
        }
        Ingredient read = Ingredients.of(more, tables);
        return goals.entrySet().stream()
                .map(goal -> Addition.to(goal.getKey(), goal.getValue(), mix, read))
                .toList();
    }

    private Map<Goal, Double> goals() {
        Map<Goal, Double> goals = new EnumMap<>(Goal.class);
        if (ratio != null) {
            String plain = ratio.replaceFirst(":1$", "");
            goals.put(
                    Goal.CARBON_TO_NITROGEN, read("c-to-n", plain, Ratio::parse).value());
        }
        if (water != null) {
            goals.put(Goal.WATER, read("water", water, Share::parse).percent() / 100);
        }
        return goals;
    }

    private static <T> T read(String option, String text, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (BadValue bad) {
            throw new Failure(Exit.USAGE, bad.as(option).toString());
        }
    }
}

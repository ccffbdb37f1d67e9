package bedledger.cli.read;

import bedledger.cli.Surroundings;
import bedledger.language.Caution;
import bedledger.projections.compost.Addition;
import bedledger.projections.compost.Blend;
import bedledger.projections.compost.Goal;
import bedledger.projections.compost.Ingredient;
import bedledger.projections.compost.Pile;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.tables.Coefficient;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The page of a compost mix for people: the answers in a sentence each, then what went in, then what it rests on. */
final class BlendText {

    private final Surroundings around;
    private final @Nullable ReadBook book;
    private final List<Pile> piles;
    private final List<Blend> mixes;
    private final List<Addition> additions;
    private final MassUnit unit;
    private final BlendWords words;

    BlendText(
            Surroundings around,
            @Nullable ReadBook book,
            List<Pile> piles,
            List<Blend> mixes,
            List<Addition> additions) {
        this.around = around;
        this.book = book;
        this.piles = piles;
        this.mixes = mixes;
        this.additions = additions;
        this.unit = book == null ? MassUnit.KILOGRAM : book.massUnit();
        this.words = new BlendWords(unit);
    }

    /** One sentence for each thing asked. */
    List<String> answers() {
        List<String> answers = new ArrayList<>();
        if (mixes.isEmpty()) {
            answers.add("No pile is on record" + (book == null ? "" : book.known())
                    + ". Ask for a mix: bedledger blend \"grass clippings 10kg\" --with leaves");
        }
        for (int at = 0; at < mixes.size(); at++) {
            answers.add(piles.isEmpty() ? words.mix(mixes.get(at)) : words.pile(piles.get(at)));
        }
        additions.forEach(each -> answers.add(words.addition(each)));
        return answers;
    }

    void print() {
        if (book != null) {
            book.banner().forEach(around.out()::println);
        }
        answers().forEach(this::paragraph);
        List<Ingredient> all = new ArrayList<>();
        mixes.forEach(mix -> all.addAll(mix.ingredients()));
        additions.stream().limit(1).forEach(each -> all.add(each.more()));
        if (all.isEmpty()) {
            return;
        }
        if (additions.size() > 1) {
            paragraph("One ingredient meets one goal; where the two amounts lie apart, water or a third meets both.");
        }
        around.out().println();
        table(all);
        grounds(all);
        lines(around.err(), "Caution: " + Caution.COMPOST.words());
    }

    private void table(List<Ingredient> all) {
        TextTable table = new TextTable("ingredient", unit.name(), "water %", "C %", "N %", "C:N");
        all.forEach(each -> table.row(
                each.name(),
                cell(each.kilograms(), unit.kilograms()),
                cell(each.water(), BlendWords.PERCENT),
                cell(each.carbon(), BlendWords.PERCENT),
                cell(each.nitrogen(), BlendWords.PERCENT),
                cell(each.carbonToNitrogen(), 1)));
        table.lines().forEach(around.out()::println);
    }

    private static String cell(Optional<Estimate> figure, double factor) {
        return figure.map(each -> Figure.band(each, factor)).orElse("-");
    }

    private void grounds(List<Ingredient> all) {
        boolean open = Stream.concat(
                        additions.stream().flatMap(each -> each.kilograms().stream()),
                        mixes.stream().flatMap(BlendText::figures))
                .anyMatch(each -> !each.rangeUnknownFor().isEmpty());
        if (open) {
            paragraph("† at one end of some range no amount would do, or no range is known: the true doubt is wider.");
        }
        boolean tabled = all.stream().anyMatch(each -> !each.from().isEmpty());
        paragraph("Water is of fresh weight, C and N of dry weight. What was said is taken as it was said"
                + (tabled ? "; the rest is typical, and a sample weighed and dried is worth more:" : "."));
        all.stream().filter(each -> !each.from().isEmpty()).distinct().forEach(this::from);
        paragraph("Mixing equations and usual start: Cornell Waste Management Institute (C:N about "
                + Figure.short3(Goal.CARBON_TO_NITROGEN.usual()) + "; water at most "
                + Figure.short3(Goal.WATER.usual() / BlendWords.PERCENT) + " %, slow below "
                + Figure.short3(Goal.tooDry() / BlendWords.PERCENT)
                + " %). What a rule asks of C:N: bedledger rules.");
    }

    private static Stream<Estimate> figures(Blend mix) {
        return Stream.of(mix.kilograms(), mix.water(), mix.carbonToNitrogen()).flatMap(Optional::stream);
    }

    /** The figures of one ingredient that come from a table, together where they are equally sure. */
    private void from(Ingredient ingredient) {
        Map<String, List<String>> bySource = new LinkedHashMap<>();
        for (Coefficient each : ingredient.from()) {
            String source =
                    each.citation().status().words() + ", " + each.citation().source();
            bySource.computeIfAbsent(source, one -> new ArrayList<>())
                    .add(each.quantity().words());
        }
        String words = bySource.entrySet().stream()
                .map(each -> String.join(", ", each.getValue()) + " (" + each.getKey() + ")")
                .collect(Collectors.joining("; "));
        paragraph("- " + ingredient.name() + ": " + words.replace(", memory)", ")"));
    }

    private void paragraph(String text) {
        lines(around.out(), text);
    }

    private static void lines(java.io.PrintStream to, String text) {
        TextTable.wrapped(text, 80).forEach(to::println);
    }
}

package bedledger.cli.read;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Sum;
import bedledger.projections.trends.Ground;
import bedledger.projections.trends.Input;
import bedledger.projections.trends.Season;
import bedledger.projections.trends.Trends;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What {@code seasons --json} prints; masses in kg on the bed.
 *
 * @param of dry, carbon or nitrogen
 * @param rule how low and high are combined
 */
record SeasonsView(
        boolean practice,
        String farm,
        String on,
        @Nullable String asKnownOn,
        String of,
        String rule,
        List<SeasonView> seasons,
        List<CellView> all,
        List<CellView> beds) {

    /** One season; the last one ends on the day asked. */
    record SeasonView(String name, String from, String to) {}

    /**
     * A bed in a season.
     *
     * @param bed empty for all beds
     * @param passes workings of the soil that are on record
     * @param days days by what covered the bed; null for all beds
     */
    record CellView(
            @Nullable String bed,
            String season,
            double squareMetres,
            ReturnedView.SumView total,
            Map<String, ReturnedView.SumView> sources,
            int guessesLeftOut,
            @Nullable Integer passes,
            @Nullable Map<String, Long> days,
            List<Long> entries) {}

    static SeasonsView of(ReadBook book, Trends trends, Measure measure) {
        List<CellView> all = new ArrayList<>();
        trends.seasons()
                .forEach(season -> all.add(cell(null, season, trends.inputs().of(season), measure, trends)));
        List<CellView> beds = new ArrayList<>();
        for (BedId bed : trends.beds()) {
            trends.seasons()
                    .forEach(
                            season -> beds.add(cell(bed, season, trends.inputs().of(bed, season), measure, trends)));
        }
        return new SeasonsView(
                book.opened().practice(),
                book.opened().farm(),
                trends.asOf().toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                measure.words(),
                Estimate.RULE,
                trends.seasons().stream()
                        .map(season -> new SeasonView(
                                season.name(),
                                season.from().toString(),
                                season.to().toString()))
                        .toList(),
                all,
                beds);
    }

    private static CellView cell(@Nullable BedId bed, Season season, Input input, Measure measure, Trends trends) {
        Map<String, ReturnedView.SumView> sources = new LinkedHashMap<>();
        input.sources().forEach(source -> {
            Sum sum = input.from(source, measure);
            sources.put(source.words(), ReturnedView.SumView.of(sum));
        });
        return new CellView(
                bed == null ? null : bed.name(),
                season.name(),
                input.squareMetres(),
                ReturnedView.SumView.of(input.total(measure)),
                sources,
                input.typicalLeftOut(),
                bed == null ? null : trends.passes(bed, season).size(),
                bed == null ? null : days(trends.days(bed, season)),
                List.copyOf(input.entries()));
    }

    private static Map<String, Long> days(Map<Ground, Long> days) {
        Map<String, Long> words = new LinkedHashMap<>();
        days.forEach((ground, count) -> words.put(ground.words(), count));
        return words;
    }

    Output.Table table() {
        List<List<String>> rows = new ArrayList<>();
        all.forEach(cell -> rows.addAll(rows(cell)));
        beds.forEach(cell -> rows.addAll(rows(cell)));
        return new Output.Table(
                List.of(
                        "bed",
                        "season",
                        "square_metres",
                        "source",
                        of + "_kg_low",
                        of + "_kg_best",
                        of + "_kg_high",
                        "pieces",
                        "pieces_not_known",
                        "guesses_left_out"),
                rows);
    }

    private static List<List<String>> rows(CellView cell) {
        List<List<String>> rows = new ArrayList<>();
        cell.sources().forEach((source, sum) -> rows.add(row(cell, source, sum)));
        rows.add(row(cell, "all", cell.total()));
        return rows;
    }

    private static List<String> row(CellView cell, String source, ReturnedView.SumView sum) {
        ReturnedView.FigureView figure = sum.kilograms();
        return List.of(
                cell.bed() == null ? "all" : cell.bed(),
                cell.season(),
                Double.toString(cell.squareMetres()),
                source,
                figure == null ? "" : Double.toString(figure.low()),
                figure == null ? "" : Double.toString(figure.best()),
                figure == null ? "" : Double.toString(figure.high()),
                Integer.toString(sum.pieces()),
                Integer.toString(sum.unknown()),
                source.equals("all") ? Integer.toString(cell.guessesLeftOut()) : "");
    }
}

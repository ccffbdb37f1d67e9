package bedledger.cli.read;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.soil.BedSoil;
import bedledger.projections.soil.CarbonChange;
import bedledger.projections.soil.CarbonInput;
import bedledger.projections.soil.EquivalentMass;
import bedledger.projections.soil.SampledLayer;
import bedledger.projections.soil.Sampling;
import bedledger.projections.soil.Soil;
import bedledger.projections.soil.SoilBalance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What {@code soil --json} prints. */
record SoilView(
        boolean practice,
        String farm,
        String on,
        @Nullable String asKnownOn,
        int years,
        String answer,
        String rule,
        List<BedView> beds) {
    /** One bed. */
    record BedView(
            String bed,
            double squareMetres,
            @Nullable Sourced stock,
            List<SamplingView> samplings,
            List<InputView> inputs,
            String seasonsCounted,
            @Nullable Sourced yearlyInput,
            int pieces,
            int unknownPieces,
            List<BalanceView> balances,
            @Nullable ChangeView change,
            @Nullable EquivalentMass equivalentMass,
            List<String> missing,
            List<String> words) {}

    /** One day's samples. */
    record SamplingView(
            String day,
            List<String> beds,
            List<LayerView> layers,
            @Nullable Sourced stock,
            List<String> missing,
            List<String> words,
            List<Long> entries) {
        static SamplingView of(Sampling sampling) {
            return new SamplingView(
                    sampling.day().toString(),
                    sampling.beds().stream().map(Object::toString).toList(),
                    sampling.layers().stream().map(LayerView::of).toList(),
                    Sourced.orNull(sampling.stock()),
                    sampling.missing(),
                    sampling.words(),
                    List.copyOf(sampling.entries()));
        }
    }

    /** One layer; depths in cm, bulk density in g/cm³, stones as a share of the volume. */
    record LayerView(
            double from,
            double to,
            @Nullable Sourced carbon,
            int samples,
            @Nullable Double bulkDensity,
            @Nullable Double stones) {
        static LayerView of(SampledLayer layer) {
            return new LayerView(
                    layer.from(),
                    layer.to(),
                    Sourced.orNull(layer.carbon()),
                    layer.samples(),
                    layer.density().isPresent() ? layer.density().getAsDouble() : null,
                    layer.stones().isPresent() ? layer.stones().getAsDouble() : null);
        }
    }

    /** What went back in one season, kg. */
    record InputView(
            String season,
            Map<String, NitrogenView.SumView> carbonBySource,
            NitrogenView.SumView carbon,
            NitrogenView.SumView humusByAmg,
            NitrogenView.SumView humusByIcbm,
            NitrogenView.SumView matterByHenin,
            List<Long> entries) {
        static InputView of(CarbonInput input) {
            Map<String, NitrogenView.SumView> sources = new LinkedHashMap<>();
            input.carbon().forEach((kind, sum) -> sources.put(kind.words(), NitrogenView.SumView.of(sum)));
            return new InputView(
                    input.season(),
                    sources,
                    NitrogenView.SumView.of(input.all()),
                    NitrogenView.SumView.of(input.amg()),
                    NitrogenView.SumView.of(input.icbm()),
                    NitrogenView.SumView.of(input.henin()),
                    List.copyOf(input.entries()));
        }
    }

    /** One balance; t C/ha. */
    record BalanceView(
            String equation,
            @Nullable Sourced rate,
            @Nullable Sourced formedAYear,
            @Nullable Sourced after,
            @Nullable Sourced inTheEnd,
            List<String> missing) {
        static BalanceView of(SoilBalance balance) {
            return new BalanceView(
                    balance.equation(),
                    Sourced.orNull(balance.rate()),
                    Sourced.orNull(balance.formed()),
                    Sourced.orNull(balance.after()),
                    Sourced.orNull(balance.limit()),
                    balance.missing());
        }
    }

    /** What may be said of the change between the first and the last sampling; % C. */
    record ChangeView(double change, @Nullable Double leastDetectable, String says, String words) {
        static ChangeView of(CarbonChange change) {
            return new ChangeView(
                    change.change(),
                    change.leastDetectable().isPresent()
                            ? change.leastDetectable().getAsDouble()
                            : null,
                    change.says().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    change.words());
        }
    }

    static SoilView of(ReadBook book, String answer, Soil soil) {
        return new SoilView(
                book.opened().practice(),
                book.opened().farm(),
                soil.asOf().toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                soil.years(),
                answer,
                Estimate.RULE,
                Each.of(soil.beds(), SoilView::bed));
    }

    private static BedView bed(BedSoil bed) {
        return new BedView(
                bed.bed().name(),
                bed.squareMetres(),
                Sourced.orNull(bed.stock()),
                bed.samplings().stream().map(SamplingView::of).toList(),
                bed.inputs().stream().map(InputView::of).toList(),
                bed.seasonsCounted(),
                Sourced.orNull(bed.yearly()),
                bed.pieces(),
                bed.unknownPieces(),
                bed.balances().stream().map(BalanceView::of).toList(),
                bed.change().map(ChangeView::of).orElse(null),
                bed.equivalent().orElse(null),
                bed.missing(),
                bed.words());
    }

    Output.Table table() {
        List<String> header = new ArrayList<>(List.of("bed", "square_metres"));
        header.addAll(three("stock_t_ha"));
        header.addAll(three("yearly_carbon_t_ha"));
        header.add("unknown_pieces");
        for (String name : List.of("amgv2", "icbm", "henin_dupuis")) {
            header.addAll(three(name + "_formed_t_ha_year"));
            header.addAll(three(name + "_after_t_ha"));
            header.addAll(three(name + "_in_the_end_t_ha"));
        }
        header.add("missing");
        return new Output.Table(header, Each.of(beds, SoilView::row));
    }

    private static List<String> three(String name) {
        return List.of(name + "_low", name + "_best", name + "_high");
    }

    private static List<String> row(BedView bed) {
        List<String> row = new ArrayList<>(List.of(bed.bed(), Double.toString(bed.squareMetres())));
        row.addAll(Sourced.cells(bed.stock()));
        row.addAll(Sourced.cells(bed.yearlyInput()));
        row.add(Integer.toString(bed.unknownPieces()));
        for (BalanceView balance : bed.balances()) {
            row.addAll(Sourced.cells(balance.formedAYear()));
            row.addAll(Sourced.cells(balance.after()));
            row.addAll(Sourced.cells(balance.inTheEnd()));
        }
        row.add(String.join("; ", bed.missing()));
        return row;
    }
}

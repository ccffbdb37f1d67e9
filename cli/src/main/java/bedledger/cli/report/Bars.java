package bedledger.cli.report;

import bedledger.cli.chart.Bar;
import bedledger.cli.chart.Palette;
import bedledger.cli.chart.Swatch;
import bedledger.cli.read.PerArea;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Sum;
import bedledger.projections.trends.Input;
import bedledger.projections.trends.Source;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;

/** What went back, as bars of its sources. */
record Bars(Measure measure, PerArea unit) {
    Bar of(String label, Input input) {
        List<Bar.Segment> segments = new ArrayList<>();
        for (Source source : input.sources()) {
            input.perSquareMetre(input.from(source, measure))
                    .filter(each -> each.best() > 0)
                    .ifPresent(each -> segments.add(new Bar.Segment(Palette.of(source), unit.of(each))));
        }
        Sum total = input.total(measure);
        Optional<Estimate> whole = input.perSquareMetre(total).filter(Estimate::hasBand);
        return new Bar(
                label,
                segments,
                whole.map(each -> OptionalDouble.of(each.low() * unit.times())).orElse(OptionalDouble.empty()),
                whole.map(each -> OptionalDouble.of(each.high() * unit.times())).orElse(OptionalDouble.empty()),
                !total.isComplete() || input.typicalLeftOut() > 0);
    }

    /** The sources of which there is anything, in the order of the kinds. */
    static SortedSet<Source> sources(Collection<Input> inputs) {
        SortedSet<Source> sources = new TreeSet<>();
        inputs.forEach(input -> sources.addAll(input.sources()));
        return sources;
    }

    /** One swatch for each source, measured and estimated apart. */
    static List<Swatch> key(Collection<Source> sources) {
        return sources.stream()
                .map(source -> {
                    Swatch swatch = Palette.of(source);
                    return new Swatch(swatch.letter(), source.words(), swatch.colour(), swatch.pattern());
                })
                .toList();
    }
}

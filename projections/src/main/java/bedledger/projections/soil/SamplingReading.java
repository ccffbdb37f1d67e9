package bedledger.projections.soil;

import bedledger.language.BedId;
import bedledger.language.BedWork.SoilSampled;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.SampleMean;
import bedledger.projections.tables.Parameters;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Reads the soil samples of a bed, those of one day together. */
final class SamplingReading {
    private final Farm farm;
    private final LocalDate asOf;
    private final OrganicMatter matter;

    SamplingReading(Farm farm, LocalDate asOf, Parameters table) {
        this.farm = farm;
        this.asOf = asOf;
        this.matter = new OrganicMatter(table);
    }

    /** Oldest first. */
    List<Sampling> of(BedId bed) {
        SortedMap<LocalDate, List<Entry>> byDay = new TreeMap<>();
        farm.entries(bed).stream()
                .filter(entry -> entry.fact() instanceof SoilSampled)
                .filter(entry -> !entry.head().doneOn().isAfter(asOf))
                .forEach(entry -> byDay.computeIfAbsent(entry.head().doneOn(), day -> new ArrayList<>())
                        .add(entry));
        List<Sampling> samplings = new ArrayList<>();
        byDay.forEach((day, entries) -> samplings.add(sampling(day, entries)));
        return samplings;
    }

    private record Depths(double from, double to) implements Comparable<Depths> {
        @Override
        public int compareTo(Depths other) {
            int top = Double.compare(from, other.from);
            return top == 0 ? Double.compare(to, other.to) : top;
        }
    }

    private Sampling sampling(LocalDate day, List<Entry> entries) {
        SortedMap<Depths, List<Entry>> byDepth = new TreeMap<>();
        Set<String> missing = new LinkedHashSet<>();
        Set<String> words = new LinkedHashSet<>();
        Set<BedId> beds = new LinkedHashSet<>();
        for (Entry entry : entries) {
            SoilSampled sampled = (SoilSampled) entry.fact();
            beds.addAll(sampled.beds());
            if (sampled.fromDepth() == null || sampled.toDepth() == null) {
                missing.add("depth of the sample (#" + entry.number() + ")");
            } else {
                Depths depths = new Depths(
                        100 * sampled.fromDepth().metres(),
                        100 * sampled.toDepth().metres());
                byDepth.computeIfAbsent(depths, each -> new ArrayList<>()).add(entry);
            }
        }
        List<SampledLayer> layers = new ArrayList<>();
        byDepth.forEach((depths, some) -> layers.add(layer(depths, some, missing, words)));
        return new Sampling(
                day,
                layers,
                List.copyOf(beds),
                how(entries),
                List.copyOf(missing),
                List.copyOf(words),
                new TreeSet<>(entries.stream().map(Entry::number).toList()));
    }

    private SampledLayer layer(Depths depths, List<Entry> entries, Set<String> missing, Set<String> words) {
        String where = depth(depths.from) + " to " + depth(depths.to) + " cm";
        List<Estimate> found = new ArrayList<>();
        entries.forEach(entry -> carbon(entry, words)
                .ifPresentOrElse(
                        found::add, () -> missing.add("organic carbon or organic matter (#" + entry.number() + ")")));
        OptionalDouble density = mean(
                entries,
                sampled -> Optional.ofNullable(sampled.bulkDensity()).map(each -> each.gramsPerCubicCentimetre()));
        OptionalDouble stones =
                mean(entries, sampled -> Optional.ofNullable(sampled.stones()).map(each -> each.percent() / 100));
        if (density.isEmpty()) {
            missing.add("bulk density, " + where);
        }
        if (stones.isEmpty()) {
            missing.add("stones, " + where + ": taken as none, so the stock is at most this");
        }
        if (depths.to <= depths.from) {
            missing.add("depth: " + where + " is no layer");
        }
        Optional<Estimate> carbon = depths.to > depths.from ? together(found, entries) : Optional.empty();
        return new SampledLayer(depths.from, depths.to, carbon, found.size(), deviation(found), density, stones);
    }

    private static OptionalDouble deviation(List<Estimate> found) {
        return found.size() < 2
                ? OptionalDouble.empty()
                : SampleMean.of(
                                found.stream().map(Estimate::best).toList(),
                                Tables.sampling().confidence())
                        .standardDeviation();
    }

    private static Optional<Estimate> together(List<Estimate> found, List<Entry> entries) {
        List<Long> numbers = entries.stream().map(Entry::number).toList();
        if (found.size() < 2) {
            return found.stream().findFirst().map(each -> each.behind(numbers));
        }
        SampleMean mean = SampleMean.of(
                found.stream().map(Estimate::best).toList(), Tables.sampling().confidence());
        return Optional.of(Estimate.measured(
                        "soil carbon by " + found.size() + " samples #" + numbers.get(0),
                        mean.mean(),
                        mean.halfWidth().orElse(0),
                        "% C")
                .by("mean of " + found.size() + " samples, 95 % interval")
                .behind(numbers));
    }

    private Optional<Estimate> carbon(Entry entry, Set<String> words) {
        SoilSampled sampled = (SoilSampled) entry.fact();
        String name = "soil carbon #" + entry.number();
        if (sampled.organicCarbon() != null) {
            return Optional.of(Estimate.measuredWithoutInterval(
                            name, sampled.organicCarbon().percent(), "% C")
                    .by("organic carbon as the laboratory gave it"));
        }
        if (sampled.organicMatter() == null) {
            return Optional.empty();
        }
        double percent = sampled.organicMatter().percent();
        Estimate matterHere = Estimate.measuredWithoutInterval(name, percent, "% C");
        if (sampled.matterFactor() != null && sampled.matterFactor().value() > 0) {
            return Optional.of(matterHere
                    .times(1 / sampled.matterFactor().value())
                    .by("organic matter over the laboratory's own factor " + sampled.matterFactor()));
        }
        words.add(readings(entry, percent, sampled.carbonMethod()));
        return Optional.of(matterHere
                .dividedBy(Derived.of(matter.unknownFactor()))
                .by("organic matter over 1.9 (1.4 to 2.5; Pribyl 2010), for the laboratory's factor is not on record"));
    }

    private String readings(Entry entry, double percent, @org.jspecify.annotations.Nullable String method) {
        List<String> said = new ArrayList<>();
        matter.factors()
                .forEach((name, factor) ->
                        said.add(String.format(Locale.ROOT, "%.2f %% C by %s (%s)", percent / factor, name, factor)));
        boolean burnt = method != null && method.toLowerCase(Locale.ROOT).contains("ignition");
        String rough = burnt
                ? String.format(
                        Locale.ROOT,
                        "; if it is the loss on ignition itself, roughly %.2f %% C (Ball 1964)",
                        matter.carbonFromIgnition(percent))
                : "";
        return "#" + entry.number() + " gives organic matter, not carbon, and not the laboratory's factor: "
                + String.join(", ", said) + rough + "; ask the laboratory";
    }

    private static OptionalDouble mean(List<Entry> entries, Function<SoilSampled, Optional<Double>> value) {
        return entries.stream()
                .flatMap(entry -> value.apply((SoilSampled) entry.fact()).stream())
                .mapToDouble(Double::doubleValue)
                .average();
    }

    private static String how(List<Entry> entries) {
        Set<String> said = new TreeSet<>();
        for (Entry entry : entries) {
            SoilSampled sampled = (SoilSampled) entry.fact();
            said.add(sampled.laboratory() + " / " + sampled.carbonMethod());
        }
        return String.join("; ", said);
    }

    private static String depth(double centimetres) {
        return String.format(Locale.ROOT, "%.0f", centimetres);
    }

    /** The latest value of a bed's samples that a laboratory found, with the entry. */
    Optional<Map.Entry<Double, Entry>> latest(BedId bed, Function<SoilSampled, Optional<Double>> value) {
        return farm.entries(bed).stream()
                .filter(entry -> entry.fact() instanceof SoilSampled)
                .filter(entry -> !entry.head().doneOn().isAfter(asOf))
                .flatMap(entry ->
                        value.apply((SoilSampled) entry.fact()).stream().map(each -> Map.entry(each, entry)))
                .reduce((earlier, later) -> later);
    }
}

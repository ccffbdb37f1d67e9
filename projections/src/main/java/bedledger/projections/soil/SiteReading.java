package bedledger.projections.soil;

import bedledger.language.BedId;
import bedledger.language.BedWork.SoilSampled;
import bedledger.language.Entry;
import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.Parameters;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What the balances need to know of soil and climate: from the soil tests and the weather, as given, assumed, or missing. */
final class SiteReading {
    private static final int DAYS_OF_A_YEAR = 365;
    private static final int GRAMS_PER_PERCENT = 10;

    private final SamplingReading samplings;
    private final Parameters table;
    private final SoilOptions options;
    private final OptionalDouble measuredCelsius;

    SiteReading(SamplingReading samplings, Parameters table, SoilOptions options, Weather weather, LocalDate asOf) {
        this.samplings = samplings;
        this.table = table;
        this.options = options;
        this.measuredCelsius = yearsMean(weather, asOf);
    }

    /** Empty unless every day of the year up to that day is known or stood in for. */
    private static OptionalDouble yearsMean(Weather weather, LocalDate asOf) {
        double sum = 0;
        for (int back = 0; back < DAYS_OF_A_YEAR; back++) {
            var day = weather.on(asOf.minusDays(back));
            if (day.isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += day.get().mean();
        }
        return OptionalDouble.of(sum / DAYS_OF_A_YEAR);
    }

    /**
     * What is known of the site of a bed; a part that is empty is named.
     *
     * @param water, carbonate and carbonToNitrogen are assumed over a range where they are not known
     */
    record SiteFigures(
            Optional<Estimate> celsius,
            Estimate water,
            Optional<Estimate> clay,
            Estimate carbonate,
            Optional<Estimate> ph,
            Estimate carbonToNitrogen,
            List<String> missing,
            List<String> words) {}

    SiteFigures of(BedId bed) {
        List<String> missing = new ArrayList<>();
        List<String> words = new ArrayList<>();
        Optional<Estimate> celsius = celsius(words);
        if (celsius.isEmpty()) {
            missing.add("mean temperature of the year: enter weather, or give --mean-temperature");
        }
        Optional<Estimate> clay = tested(
                bed,
                "clay",
                "g/kg",
                options.clay(),
                s -> Optional.ofNullable(s.clay()).map(each -> GRAMS_PER_PERCENT * each.percent()),
                words);
        if (clay.isEmpty()) {
            missing.add("clay: have it tested once, or give --clay");
        }
        Optional<Estimate> ph = tested(
                bed, "pH", "", options.ph(), s -> Optional.ofNullable(s.ph()).map(each -> each.value()), words);
        if (ph.isEmpty()) {
            missing.add("pH: have it tested, or give --ph");
        }
        Estimate water = given("rain and irrigation less evaporation", options.water(), missing, words);
        Estimate carbonate = given("carbonate", options.carbonate(), missing, words);
        Estimate ratio = given("soil C:N", options.carbonToNitrogen(), missing, words);
        return new SiteFigures(celsius, water, clay, carbonate, ph, ratio, missing, words);
    }

    private Optional<Estimate> celsius(List<String> words) {
        if (options.celsius().isPresent()) {
            words.add(String.format(
                    Locale.ROOT,
                    "mean temperature %.1f C as given",
                    options.celsius().getAsDouble()));
            return Optional.of(Estimate.exact(options.celsius().getAsDouble(), "C"));
        }
        if (measuredCelsius.isPresent()) {
            words.add(String.format(
                    Locale.ROOT, "mean temperature %.1f C, of the year up to that day", measuredCelsius.getAsDouble()));
        }
        return measuredCelsius.isPresent()
                ? Optional.of(Estimate.exact(measuredCelsius.getAsDouble(), "C"))
                : Optional.empty();
    }

    private Optional<Estimate> tested(
            BedId bed,
            String name,
            String unit,
            OptionalDouble given,
            Function<SoilSampled, Optional<Double>> value,
            List<String> words) {
        if (given.isPresent()) {
            words.add(name + " " + number(given.getAsDouble()) + " " + unit + " as given");
            return Optional.of(Estimate.exact(given.getAsDouble(), unit));
        }
        return samplings.latest(bed, value).map(found -> {
            Entry entry = found.getValue();
            words.add((name + " " + number(found.getKey()) + " " + unit).strip() + " as tested (#" + entry.number()
                    + ")");
            return Estimate.exact(found.getKey(), unit).behind(List.of(entry.number()));
        });
    }

    private Estimate given(String name, OptionalDouble given, List<String> missing, List<String> words) {
        if (given.isPresent()) {
            words.add(name + " " + number(given.getAsDouble()) + " as given");
            return Estimate.exact(given.getAsDouble(), "");
        }
        var assumed = table.get("assumed", name);
        var range = java.util.Objects.requireNonNull(assumed.range());
        missing.add(name + ": taken as " + number(assumed.value()) + " (" + number(range.low()) + " to "
                + number(range.high()) + ") " + assumed.unit() + ", a judgement");
        return Derived.of(assumed);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}

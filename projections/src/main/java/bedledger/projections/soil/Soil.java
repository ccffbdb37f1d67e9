package bedledger.projections.soil;

import bedledger.language.BedId;
import bedledger.language.Farm;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.history.BedAreas;
import bedledger.projections.returned.BedShare;
import bedledger.projections.returned.Evidence;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import bedledger.projections.returned.Sum;
import bedledger.projections.tables.Parameters;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * The soil carbon of beds: samples, what went in, and what three balances make of it.
 *
 * @param years how far the balances look ahead
 */
public record Soil(LocalDate asOf, int years, List<BedSoil> beds) {
    public Soil {
        beds = List.copyOf(beds);
    }

    /** Of the beds asked about, those that are in use on the day or were sampled. */
    public static Soil of(
            Farm farm, Returned returned, Weather weather, Options options, SoilOptions given, Predicate<BedId> asked) {
        Reading reading = new Reading(farm, returned, weather, options, given);
        return new Soil(
                returned.asOf(),
                given.years(),
                farm.beds().stream()
                        .filter(asked)
                        .filter(reading::isThere)
                        .map(reading::bed)
                        .toList());
    }

    private static final class Reading {
        private final Farm farm;
        private final Options options;
        private final LocalDate asOf;
        private final Parameters table = Parameters.of("soil-carbon");
        private final SamplingReading samplings;
        private final SiteReading sites;
        private final Balances balances;
        private final Humification humification;
        private final Detection detection;
        private final BedAreas areas;
        private final Map<BedId, NavigableMap<String, List<CarbonInput.Part>>> parts = new HashMap<>();

        Reading(Farm farm, Returned returned, Weather weather, Options options, SoilOptions given) {
            this.farm = farm;
            this.options = options;
            this.asOf = returned.asOf();
            this.samplings = new SamplingReading(farm, asOf, table);
            this.sites = new SiteReading(samplings, table, given, weather, asOf);
            this.balances = new Balances(table, given.years());
            this.humification = new Humification(table);
            this.detection = new Detection(table);
            this.areas = new BedAreas(farm);
            returned.pieces().stream()
                    .filter(piece -> options.countTypical() || piece.evidence() != Evidence.TYPICAL)
                    .forEach(this::take);
        }

        private void take(Return piece) {
            for (BedShare share : piece.beds()) {
                parts.computeIfAbsent(share.bed(), bed -> new TreeMap<>())
                        .computeIfAbsent(options.season(piece.day()), season -> new ArrayList<>())
                        .add(new CarbonInput.Part(piece, piece.on(share.bed())));
            }
        }

        boolean isThere(BedId bed) {
            var state = farm.bed(bed).on(asOf);
            return state.laidOut() != null && state.retired() == null;
        }

        BedSoil bed(BedId bed) {
            List<Sampling> sampled = samplings.of(bed);
            NavigableMap<String, List<CarbonInput.Part>> bySeason = parts.getOrDefault(bed, new TreeMap<>());
            List<CarbonInput> inputs = new ArrayList<>();
            bySeason.forEach((season, some) -> inputs.add(CarbonInput.of(season, some, humification)));
            Seasons seasons = Seasons.of(options, farm.bed(bed).on(asOf).laidOut(), asOf);
            List<CarbonInput.Part> counted = bySeason.entrySet().stream()
                    .filter(each -> seasons.holds(each.getKey()))
                    .flatMap(each -> each.getValue().stream())
                    .toList();
            CarbonInput all = CarbonInput.of(seasons.words(), counted, humification);
            double square = areas.squareMetres(bed, asOf);
            Balances.Yearly yearly = new Balances.Yearly(
                    perYear(all.all(), seasons, square),
                    perYear(all.amg(), seasons, square),
                    perYear(all.icbm(), seasons, square),
                    perYear(all.henin(), seasons, square));
            SiteReading.SiteFigures site = sites.of(bed);
            Optional<Estimate> stock = sampled.isEmpty()
                    ? Optional.empty()
                    : sampled.get(sampled.size() - 1).stock();
            return new BedSoil(
                    bed,
                    square,
                    sampled,
                    inputs,
                    seasons.words(),
                    yearly.carbon().map(each -> each.ratioTo(Estimate.exact(0.1, ""), "t C/ha")),
                    all.all().unknown(),
                    all.all().pieces(),
                    List.of(
                            balances.amg(stock, yearly, site),
                            balances.icbm(stock, yearly),
                            balances.henin(stock, yearly, site)),
                    Comparison.change(sampled, detection),
                    Comparison.equivalent(sampled),
                    missing(sampled, all),
                    site.words());
        }

        private static Optional<Estimate> perYear(Sum sum, Seasons seasons, double squareMetres) {
            if (squareMetres <= 0) {
                return Optional.empty();
            }
            if (sum.pieces() == 0) {
                return Optional.of(Estimate.exact(0, "kg/m²"));
            }
            return sum.known().map(each -> each.ratioTo(Estimate.exact(squareMetres * seasons.count(), ""), "kg/m²"));
        }

        private static List<String> missing(List<Sampling> sampled, CarbonInput all) {
            List<String> missing = new ArrayList<>();
            if (sampled.isEmpty()) {
                missing.add("a soil sample: none is on record");
            } else {
                missing.addAll(sampled.get(sampled.size() - 1).missing());
            }
            if (all.all().unknown() > 0) {
                missing.add("carbon of " + all.all().unknown() + " of "
                        + all.all().pieces() + " pieces that went back: the input is at least what is shown");
            }
            if (all.all().pieces() == 0) {
                missing.add("nothing on record went back in " + all.season());
            }
            if (all.amg().unknown() > all.all().unknown()) {
                missing.add("humified share of "
                        + (all.amg().unknown() - all.all().unknown()) + " pieces: AMGv2 has no row for them");
            }
            return missing;
        }
    }
}

package bedledger.cli.report;

import bedledger.cli.read.Output;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.soil.BedSoil;
import bedledger.projections.soil.CarbonChange;
import bedledger.projections.soil.Profile;
import bedledger.projections.soil.SampledLayer;
import bedledger.projections.soil.Sampling;
import bedledger.projections.soil.Soil;
import bedledger.projections.soil.SoilBalance;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * The tables behind the charts of soil carbon, and the same as data.
 *
 * @param places beds that were always sampled together, by their samplings
 */
record SoilTables(Soil soil, Map<List<Sampling>, List<BedSoil>> places) {
    /** The change that a balance makes of the last stock; what is doubtful in both is not doubted twice. */
    static Optional<Estimate> change(BedSoil bed, SoilBalance balance) {
        return bed.stock().flatMap(stock -> balance.after().map(after -> after.minus(stock)));
    }

    /** One decimal, a true minus. */
    static String band(Estimate estimate) {
        return one(estimate.best())
                + (estimate.hasBand() ? " (" + one(estimate.low()) + " to " + one(estimate.high()) + ")" : "")
                + (estimate.rangeUnknownFor().isEmpty() ? "" : "†");
    }

    private static String one(double value) {
        String size = String.format(Locale.ROOT, "%.1f", Math.abs(value));
        return value < 0 && !size.equals("0.0") ? "−" + size : size;
    }

    private static String band(Optional<Estimate> estimate) {
        return estimate.map(SoilTables::band).orElse("not known");
    }

    Table samplings() {
        List<String> columns = List.of(
                "day",
                "layers: % carbon",
                "bulk density, g/cm3",
                "samples",
                "stock to its depth",
                "over equal mass",
                "error known",
                "entries");
        List<Table.Group> groups = new ArrayList<>();
        places.forEach((samplings, beds) -> {
            EquivalentStock stocks = EquivalentStock.of(samplings);
            groups.add(new Table.Group(
                    (beds.size() == 1 ? "Bed " : "Beds ")
                            + SoilCarbonChapter.names(beds)
                            + reference(stocks.reference()),
                    columns.size(),
                    samplings.stream().map(each -> row(each, stocks)).toList()));
        });
        return Table.grouped(
                "table-soil-stock",
                "Carbon stock as sampled, t C/ha: best (low to high); † how much samples differ by chance is not known",
                "No soil sample is on record, so there is no stock.",
                columns,
                groups);
    }

    private static String reference(OptionalDouble reference) {
        return reference.isPresent()
                ? String.format(Locale.ROOT, ", equal mass %.0f t/ha of fine earth", reference.getAsDouble())
                : ", no stock: see what is incomplete";
    }

    private static Row row(Sampling sampling, EquivalentStock stocks) {
        return Row.of(
                Cell.whole(sampling.day().toString()).asHeader(),
                Cell.of(sampling.layers().stream().map(SoilTables::layer).collect(Collectors.joining("; "))),
                Cell.of(sampling.layers().stream()
                        .map(layer -> layer.density().isPresent()
                                ? String.format(
                                        Locale.ROOT, "%.2f", layer.density().getAsDouble())
                                : "not known")
                        .collect(Collectors.joining("; "))),
                Cell.number(samples(sampling)),
                Cell.number(band(sampling.stock())),
                Cell.number(band(Optional.ofNullable(stocks.stocks().get(sampling)))),
                Cell.of(error(sampling)),
                Cell.of(SeasonsAsked.entries(sampling.entries())));
    }

    private static String layer(SampledLayer layer) {
        return String.format(Locale.ROOT, "%.0f to %.0f cm ", layer.from(), layer.to())
                + layer.carbon()
                        .map(each -> String.format(Locale.ROOT, "%.2f", each.best()))
                        .orElse("not known");
    }

    private static String samples(Sampling sampling) {
        return sampling.layers().stream()
                .map(layer -> Integer.toString(layer.samples()))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static String error(Sampling sampling) {
        boolean repeated = !sampling.layers().isEmpty()
                && sampling.layers().stream()
                        .allMatch(layer -> layer.deviation().isPresent());
        String of = sampling.isCompositeOfBeds() ? ", of " + sampling.beds().size() + " beds together" : "";
        return (repeated ? "yes, 95 % interval" : "no, one sample") + of;
    }

    Table balances() {
        List<String> columns = List.of(
                "bed",
                "last stock",
                "carbon back a year",
                "AMGv2: humus formed a year",
                "AMGv2: rate a year",
                "AMGv2: change",
                "ICBM: humus formed a year",
                "ICBM: change");
        return Table.of(
                        "table-soil-balance",
                        "Two balances over " + soil.years()
                                + " years, t C/ha: best (low to high); † no range is known for"
                                + " some coefficient in it; * not known for every piece that went back, so at least so much",
                        "There is no bed.",
                        columns,
                        soil.beds().stream().map(SoilTables::balance).toList())
                .numbersIn(1, columns.size());
    }

    private static Row balance(BedSoil bed) {
        SoilBalance amg = bed.balances().get(0);
        SoilBalance icbm = bed.balances().get(1);
        String star = bed.unknownPieces() > 0 ? " *" : "";
        return Row.of(
                Cell.of(bed.bed().name()).asHeader(),
                Cell.number(band(bed.stock())),
                Cell.number(fine(bed.yearly()) + star),
                Cell.number(fine(amg.formed()) + star),
                Cell.number(rate(amg.rate())),
                Cell.number(band(change(bed, amg))),
                Cell.number(fine(icbm.formed()) + star),
                Cell.number(band(change(bed, icbm))));
    }

    private static String fine(Optional<Estimate> estimate) {
        return spelt(estimate, "%.2f");
    }

    private static String rate(Optional<Estimate> estimate) {
        return spelt(estimate, "%.3f");
    }

    private static String spelt(Optional<Estimate> estimate, String form) {
        return estimate.map(each -> String.format(Locale.ROOT, form, each.best())
                        + (each.hasBand()
                                ? String.format(Locale.ROOT, " (" + form + " to " + form + ")", each.low(), each.high())
                                : "")
                        + (each.rangeUnknownFor().isEmpty() ? "" : "†"))
                .orElse("not known");
    }

    Output.Table stockData() {
        List<String> header = new ArrayList<>(List.of("beds", "day", "samples", "reference_mass_t_ha", "mass_t_ha"));
        header.addAll(Signed.three("stock_to_depth_t_ha"));
        header.addAll(Signed.three("stock_equal_mass_t_ha"));
        header.addAll(List.of("least_detectable_percent_carbon", "may_be_said", "entries"));
        List<List<String>> rows = new ArrayList<>();
        places.forEach((samplings, beds) -> {
            EquivalentStock stocks = EquivalentStock.of(samplings);
            samplings.forEach(each -> rows.add(row(each, beds, stocks)));
        });
        return new Output.Table(header, rows);
    }

    private static List<String> row(Sampling sampling, List<BedSoil> beds, EquivalentStock stocks) {
        Optional<CarbonChange> change = beds.get(0).change();
        List<String> row = new ArrayList<>(List.of(
                SoilCarbonChapter.names(beds),
                sampling.day().toString(),
                samples(sampling),
                text(stocks.reference()),
                sampling.profile().map(Profile::mass).map(Object::toString).orElse("")));
        row.addAll(three(sampling.stock()));
        row.addAll(three(Optional.ofNullable(stocks.stocks().get(sampling))));
        row.add(change.map(CarbonChange::leastDetectable).map(SoilTables::text).orElse(""));
        row.add(change.map(CarbonChange::words).orElse("sampled once: no change can be told"));
        row.add(SeasonsAsked.entries(sampling.entries()));
        return row;
    }

    private static String text(OptionalDouble value) {
        return value.isPresent() ? Double.toString(value.getAsDouble()) : "";
    }

    private static List<String> three(Optional<Estimate> figure) {
        return figure.map(each -> List.of(
                        each.hasBand() ? Double.toString(each.low()) : "",
                        Double.toString(each.best()),
                        each.hasBand() ? Double.toString(each.high()) : ""))
                .orElse(List.of("", "", ""));
    }

    Output.Table balanceData() {
        List<String> header = new ArrayList<>(List.of("bed", "square_metres", "years", "seasons_counted"));
        header.addAll(Signed.three("stock_t_ha"));
        header.addAll(Signed.three("yearly_carbon_t_ha"));
        header.add("unknown_pieces");
        for (String name : List.of("amgv2", "icbm")) {
            header.addAll(Signed.three(name + "_formed_t_ha_year"));
            header.addAll(Signed.three(name + "_rate_a_year"));
            header.addAll(Signed.three(name + "_after_t_ha"));
            header.addAll(Signed.three(name + "_change_t_ha"));
        }
        header.add("missing");
        return new Output.Table(header, soil.beds().stream().map(this::data).toList());
    }

    private List<String> data(BedSoil bed) {
        List<String> row = new ArrayList<>(List.of(
                bed.bed().name(),
                Double.toString(bed.squareMetres()),
                Integer.toString(soil.years()),
                bed.seasonsCounted()));
        row.addAll(three(bed.stock()));
        row.addAll(three(bed.yearly()));
        row.add(Integer.toString(bed.unknownPieces()));
        for (SoilBalance balance : bed.balances().subList(0, 2)) {
            row.addAll(three(balance.formed()));
            row.addAll(three(balance.rate()));
            row.addAll(three(balance.after()));
            row.addAll(three(change(bed, balance)));
        }
        row.add(String.join("; ", bed.missing()));
        return row;
    }
}

package bedledger.cli.report;

import bedledger.cli.read.LaboratoryPhosphorus;
import bedledger.cli.read.Output;
import bedledger.language.BedId;
import bedledger.language.Harvesting;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.phosphorus.Phosphorus;
import bedledger.projections.phosphorus.PhosphorusBalance;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Sum;
import bedledger.projections.tables.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Phosphorus brought in less phosphorus sold, beside what the laboratory wrote of it. */
final class PhosphorusBlocks {
    private final SeasonsAsked asked;
    private final List<PhosphorusBalance> balances;
    private final Signed signed;

    PhosphorusBlocks(SeasonsAsked asked) {
        this.asked = asked;
        this.signed = new Signed(asked.perArea(Measure.PHOSPHORUS));
        this.balances = Phosphorus.of(
                        asked.book().farm(), asked.tables(), asked.trends().returned(), asked.options())
                .balances();
    }

    static Optional<Estimate> over(Sum sum, double squareMetres) {
        return squareMetres <= 0
                ? Optional.empty()
                : sum.known().map(each -> each.ratioTo(Estimate.exact(squareMetres, ""), "kg/m²"));
    }

    List<Block> blocks() {
        return List.of(
                Block.heading("Phosphorus"),
                Block.text("P, not P2O5, in " + signed.unit().unit()
                        + " of bed top: what compost, manure, listed materials and"
                        + " mulches brought in, less what was sold, by season of harvest. What has no outlet on record is not"
                        + " counted as sold; what a crop's own residue brought back was there before. A surplus is not a soil"
                        + " test: read it beside one."),
                Block.table(table()),
                Block.points(tests()));
    }

    /** The laboratory's words once for all the beds of a sample. */
    private List<String> tests() {
        Map<String, List<String>> said = new LinkedHashMap<>();
        for (BedId bed : asked.beds()) {
            String words = LaboratoryPhosphorus.of(asked.book(), bed, asked.day())
                    .map(each -> "last soil test that speaks of phosphorus, " + each)
                    .orElse(
                            "incomplete: no soil test speaks of phosphorus; enter what the laboratory wrote: bedledger did"
                                    + " sample-soil BED --report \"...\"");
            said.computeIfAbsent(words, each -> new ArrayList<>()).add(bed.name());
        }
        return said.entrySet().stream()
                .map(each -> String.join(" ", each.getValue()) + ": " + each.getKey())
                .toList();
    }

    private Table table() {
        List<String> columns = List.of("season", "brought in", "sold", "surplus", "missing", "entries");
        List<Table.Group> groups = asked.beds().stream()
                .map(bed -> new Table.Group("Bed " + bed, columns.size(), rows(bed)))
                .filter(group -> group.rows().iterator().hasNext())
                .toList();
        return Table.grouped(
                        "table-phosphorus",
                        "Phosphorus brought in less sold, in " + signed.unit().unit() + ": best (low to high)",
                        "No phosphorus came or went, as far as the book says.",
                        columns,
                        groups)
                .numbersIn(1, 4);
    }

    private List<Row> rows(BedId bed) {
        return balances.stream()
                .filter(each -> each.bed().equals(bed))
                .map(each -> Row.of(
                        Cell.whole(each.season()).asHeader(),
                        signed.cell(each.broughtIn(), over(each.broughtIn(), each.squareMetres())),
                        signed.cell(each.sold(), over(each.sold(), each.squareMetres())),
                        Cell.number(surplus(each).map(signed::band).orElse("not known")),
                        Cell.of(String.join("; ", each.missing())),
                        Cell.of(SeasonsAsked.entries(each.entries()))))
                .toList();
    }

    private static Optional<Estimate> surplus(PhosphorusBalance balance) {
        return balance.squareMetres() <= 0
                ? Optional.empty()
                : balance.surplus().map(each -> each.ratioTo(Estimate.exact(balance.squareMetres(), ""), "kg/m²"));
    }

    /** What is not known, with the beds. */
    Map<String, NavigableSet<String>> missing() {
        Map<String, NavigableSet<String>> gaps = new LinkedHashMap<>();
        balances.forEach(each -> each.missing()
                .forEach(gap -> gaps.computeIfAbsent(
                                gap.replaceAll(" \\(#[^)]*\\)", "")
                                        + "; note your own value (bedledger did own-value) or the weight",
                                one -> new TreeSet<>())
                        .add(each.bed().name())));
        return gaps;
    }

    NavigableSet<String> causes() {
        NavigableSet<String> causes = new TreeSet<>();
        balances.stream()
                .flatMap(each -> Stream.of(each.broughtIn().known(), each.sold().known()))
                .flatMap(Optional::stream)
                .forEach(each -> causes.addAll(each.deviations().keySet()));
        return causes;
    }

    /** Of produce; those of what was brought in are named where it went back. */
    List<CoefficientLine> coefficients() {
        NavigableSet<String> causes = causes();
        List<CoefficientLine> lines = new ArrayList<>(Behind.moved("product-phosphorus", causes));
        asked.book().farm().ofKind(Harvesting.Harvested.class).stream()
                .map(entry -> ((Harvesting.Harvested) entry.fact()).crop().name())
                .distinct()
                .flatMap(crop -> asked.tables().coefficient(crop, Quantity.PRODUCT_PHOSPHATE).stream())
                .filter(each -> causes.contains(each.key()))
                .map(CoefficientLine::of)
                .distinct()
                .forEach(lines::add);
        return lines;
    }

    Output.Table data() {
        List<String> header = new ArrayList<>(List.of("bed", "season", "square_metres", "unit"));
        List.of("brought_in", "sold", "surplus").forEach(name -> header.addAll(Signed.three(name)));
        header.addAll(List.of("missing", "soil_test", "entries"));
        return new Output.Table(header, balances.stream().map(this::data).toList());
    }

    private List<String> data(PhosphorusBalance each) {
        List<String> row = new ArrayList<>(List.of(
                each.bed().name(),
                each.season(),
                Double.toString(each.squareMetres()),
                signed.unit().unit()));
        row.addAll(signed.data(over(each.broughtIn(), each.squareMetres())));
        row.addAll(signed.data(over(each.sold(), each.squareMetres())));
        row.addAll(signed.data(surplus(each)));
        row.add(String.join("; ", each.missing()));
        row.add(LaboratoryPhosphorus.of(asked.book(), each.bed(), asked.day()).orElse(""));
        row.add(SeasonsAsked.entries(each.entries()));
        return row;
    }
}

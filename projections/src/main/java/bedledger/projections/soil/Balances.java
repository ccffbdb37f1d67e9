package bedledger.projections.soil;

import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.Parameters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The three balances of one bed from its stock, its yearly inputs and its site, each with every cause of doubt. */
final class Balances {
    static final String AMG = "AMGv2 (Clivot et al. 2019)";
    static final String ICBM = "ICBM (Andren & Katterer 1997)";
    static final String HENIN = "Henin & Dupuis 1945";
    private static final double TONNES_PER_HECTARE = 10;

    private final Amg amg;
    private final Icbm icbm;
    private final HeninDupuis henin;
    private final Estimate climate;
    private final double matterFactor;
    private final int years;

    Balances(Parameters table, int years) {
        this.amg = new Amg(table);
        this.icbm = new Icbm(table);
        this.henin = new HeninDupuis(table);
        this.climate = Derived.of(table.get("ICBM", "climate and soil"));
        this.matterFactor = new OrganicMatter(table).vanBemmelen();
        this.years = years;
    }

    /** What went in each year, kg/m²; empty where it is not known of any piece. */
    record Yearly(
            Optional<Estimate> carbon, Optional<Estimate> amg, Optional<Estimate> icbm, Optional<Estimate> henin) {}

    SoilBalance amg(Optional<Estimate> stock, Yearly yearly, SiteReading.SiteFigures site) {
        List<String> missing = missing(stock, yearly.amg());
        missing.addAll(site.missing());
        Optional<Estimate> formed = yearly.amg().map(Balances::perHectare);
        if (site.celsius().isEmpty() || site.clay().isEmpty() || site.ph().isEmpty()) {
            return new SoilBalance(AMG, Optional.empty(), formed, Optional.empty(), Optional.empty(), missing);
        }
        List<Estimate> about = List.of(
                site.celsius().get(),
                site.water(),
                site.clay().get(),
                site.carbonate(),
                site.ph().get(),
                site.carbonToNitrogen());
        Estimate rate = Derived.from(about, "per year", part -> rate(part, 0)).by(AMG);
        return new SoilBalance(
                AMG,
                Optional.of(rate),
                formed,
                stock.flatMap(one -> formed.map(two ->
                        amgFigure(one, two, about, part -> amg.stock(part[0], part[1], rate(part, 2), years)))),
                stock.flatMap(one -> formed.map(two ->
                        amgFigure(one, two, about, part -> amg.limit(part[0], part[1], rate(part, 2))))),
                missing);
    }

    private double rate(double[] part, int from) {
        return amg.rate(new Amg.Site(
                part[from], part[from + 1], part[from + 2], part[from + 3], part[from + 4], part[from + 5]));
    }

    private static Estimate amgFigure(
            Estimate stock,
            Estimate formed,
            List<Estimate> about,
            java.util.function.ToDoubleFunction<double[]> working) {
        List<Estimate> parts = new ArrayList<>(List.of(stock, formed));
        parts.addAll(about);
        return Derived.from(parts, "t C/ha", working).by(AMG);
    }

    SoilBalance icbm(Optional<Estimate> stock, Yearly yearly) {
        List<String> missing = missing(stock, yearly.icbm());
        missing.add("r for this climate and soil: taken as 1, that of Ultuna (0.8 to 2), a judgement");
        Optional<Estimate> formed = yearly.icbm();
        return new SoilBalance(
                ICBM,
                Optional.of(climate),
                formed.map(Balances::perHectare),
                icbmFigure(stock, yearly, true),
                icbmFigure(stock, yearly, false),
                missing);
    }

    private Optional<Estimate> icbmFigure(Optional<Estimate> stock, Yearly yearly, boolean after) {
        if (stock.isEmpty() || yearly.carbon().isEmpty() || yearly.icbm().isEmpty()) {
            return Optional.empty();
        }
        List<Estimate> parts =
                List.of(stock.get(), yearly.carbon().get(), yearly.icbm().get(), climate);
        return Optional.of(
                Derived.from(parts, "t C/ha", part -> icbm(part, after)).by(ICBM));
    }

    private double icbm(double[] part, boolean after) {
        double input = Math.max(0, part[1]);
        Icbm.Setting setting = new Icbm.Setting(input, input > 0 ? part[2] / input : 0, part[3]);
        Icbm.Pools then = after
                ? icbm.after(icbm.parted(part[0] / TONNES_PER_HECTARE, setting), setting, years)
                : icbm.steady(setting);
        return TONNES_PER_HECTARE * then.total();
    }

    SoilBalance henin(Optional<Estimate> stock, Yearly yearly, SiteReading.SiteFigures site) {
        List<String> missing = missing(stock, yearly.henin());
        missing.addAll(site.missing().stream()
                .filter(each -> each.startsWith("mean") || each.startsWith("clay") || each.startsWith("carbonate"))
                .toList());
        Optional<Estimate> formed = yearly.henin().map(each -> perHectare(each).times(1 / matterFactor));
        if (site.celsius().isEmpty() || site.clay().isEmpty()) {
            return new SoilBalance(HENIN, Optional.empty(), formed, Optional.empty(), Optional.empty(), missing);
        }
        List<Estimate> about =
                List.of(site.clay().get(), site.carbonate(), site.celsius().get());
        Estimate rate = Derived.from(about, "per year", part -> henin.rate(part[0], part[1], part[2]))
                .by(HENIN);
        return new SoilBalance(
                HENIN,
                Optional.of(rate),
                formed,
                stock.flatMap(one -> formed.map(two -> Derived.from(
                                List.of(one, two, rate),
                                "t C/ha",
                                part -> henin.matter(part[0], part[1], part[2], years))
                        .by(HENIN))),
                formed.filter(each -> rate.best() > 0)
                        .map(two -> Derived.from(List.of(two, rate), "t C/ha", part -> henin.limit(part[0], part[1]))
                                .by(HENIN)),
                missing);
    }

    private static List<String> missing(Optional<Estimate> stock, Optional<Estimate> formed) {
        List<String> missing = new ArrayList<>();
        if (stock.isEmpty()) {
            missing.add("a carbon stock: sample the soil with depth, carbon and bulk density");
        }
        if (formed.isEmpty()) {
            missing.add("what went back: nothing of it is known");
        }
        return missing;
    }

    private static Estimate perHectare(Estimate kilogramsPerSquareMetre) {
        return kilogramsPerSquareMetre.ratioTo(Estimate.exact(1 / TONNES_PER_HECTARE, ""), "t C/ha");
    }
}

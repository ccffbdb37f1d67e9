package bedledger.projections.findings;

import java.time.LocalDate;
import java.util.List;

/** The EU book: which rules it has, in the order their findings are listed. */
final class EuRules {
    private static final String BOOK = "eu";

    static RuleBook book() {
        return RuleBook.read(BOOK, EuRules::rules);
    }

    private static List<Rule> rules(Figures figures) {
        int landYears = figures.whole("land.years");
        return List.of(
                new Conversion(sheet("conversion"), figures),
                new IncidentTold(sheet("incident-told"), landYears),
                new EuSeed(sheet("seed")),
                new SeedRecorded(sheet("seed-recorded")),
                new LivestockNitrogen(sheet("livestock-nitrogen"), figures),
                new ManureOrigin(sheet("manure-origin")),
                new Legumes(sheet("legumes"), figures),
                new MaterialListed(sheet("input-authorised"), figures),
                new ProhibitedInput(sheet("prohibited-input"), figures, Prohibited.read(BOOK)),
                new ApplicationRecorded(sheet("application-recorded")),
                new PlantProtection(sheet("plant-protection")),
                new SprayInterval(sheet("spray-interval")),
                new ContainerClean(sheet("container-clean")),
                new LotOversold(sheet("lot-oversold")),
                new StoreBalance(sheet("store-balance")),
                new SaleRecorded(sheet("sale-recorded"), sheet("sale-recorded").citation(), LocalDate.MIN),
                new SampleResult(
                        sheet("sample-result"),
                        "Do not sell any of it before the control body has said so; how it came there must be looked into (Article 29)."),
                new InspectionConditions(sheet("inspection-conditions")),
                new DoesNotFit(sheet("does-not-fit")));
    }

    private static RuleSheet sheet(String id) {
        return RuleSheet.read(BOOK, id);
    }

    private EuRules() {}
}

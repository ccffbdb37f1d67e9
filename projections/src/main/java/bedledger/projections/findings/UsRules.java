package bedledger.projections.findings;

import java.time.LocalDate;
import java.util.List;

/** The US book: which rules it has, in the order their findings are listed. */
final class UsRules {
    private static final String BOOK = "us";
    /** 88 FR 3548: in force 2023-03-20, to be kept from this day on. */
    private static final LocalDate ENFORCEMENT_RULE = LocalDate.of(2024, 3, 19);

    static RuleBook book() {
        return RuleBook.read(BOOK, UsRules::rules);
    }

    private static List<Rule> rules(Figures figures) {
        int landYears = figures.whole("land.years");
        return List.of(
                new LandThreeYears(sheet("land-three-years"), figures),
                new LandBoundaries(sheet("land-boundaries")),
                new SplitOperation(sheet("split-operation"), figures),
                new IncidentTold(sheet("incident-told"), landYears),
                new SeedOrganic(sheet("seed-organic")),
                new SeedRecorded(sheet("seed-recorded")),
                new SeedlingsOrganic(sheet("seedlings-organic")),
                new TrayMix(sheet("tray-mix"), figures),
                new ManureInterval(sheet("manure-interval"), figures),
                new FdaApplication(sheet("manure-contact-fda"), figures),
                new CompostProcess(sheet("compost-process"), figures),
                new CompostFda(sheet("compost-fda"), figures),
                new CompostReviewed(sheet("compost-reviewed")),
                new FdaSupplier(sheet("compost-supplier-fda")),
                new MaterialListed(sheet("material-listed"), figures),
                new InputSource(sheet("input-source")),
                new ApplicationRecorded(sheet("application-recorded")),
                new ProhibitedInput(sheet("prohibited-input"), figures, Prohibited.read(BOOK)),
                new SodiumNitrate(sheet("sodium-nitrate"), figures),
                new MicronutrientNeed(sheet("micronutrient-need")),
                new SprayNeed(sheet("spray-need")),
                new SprayInterval(sheet("spray-interval")),
                new ReEntry(sheet("re-entry")),
                new RotationFamily(sheet("rotation-family")),
                new RotationCovers(sheet("rotation-covers")),
                new ResidueBurnt(sheet("residue-burnt")),
                new MulchRemoved(sheet("mulch-removed")),
                new MulchListed(sheet("mulch-listed")),
                new TarpHarrowed(sheet("tarp-harrowed")),
                new TreatedWood(sheet("treated-wood")),
                new WashChlorine(sheet("wash-chlorine"), figures),
                new ContainerClean(sheet("container-clean")),
                new ContainersLabelled(sheet("containers-labelled")),
                new CleanOut(sheet("clean-out"), figures),
                new LotsKeptApart(sheet("lots-kept-apart"), figures),
                new LotOversold(sheet("lot-oversold")),
                new StoreBalance(sheet("store-balance")),
                new SaleRecorded(sheet("sale-recorded"), "7 CFR 205.103(b)(2), (3)", ENFORCEMENT_RULE),
                new DoerRecorded(sheet("doer-recorded")),
                new RecordsKept(sheet("records-kept"), figures),
                new SampleResult(
                        sheet("sample-result"),
                        "Tell the certifier before any of it is sold: above 5 % of the tolerance it cannot be sold as organic, and how it"
                                + " came there must be looked into (205.671)."),
                new InspectionConditions(sheet("inspection-conditions")),
                new DoesNotFit(sheet("does-not-fit")));
    }

    private static RuleSheet sheet(String id) {
        return RuleSheet.read(BOOK, id);
    }

    private UsRules() {}
}

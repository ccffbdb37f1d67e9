package bedledger.projections.findings;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Properties;

/** The US book: which rules it has, in the order their findings are listed. */
final class UsRules {
    private static final String BOOK = "us";

    static RuleBook book() {
        Properties of = properties();
        Figures figures = Figures.read(BOOK);
        return new RuleBook(
                BOOK,
                of.getProperty("edition"),
                of.getProperty("jurisdiction"),
                of.getProperty("source"),
                of.getProperty("read"),
                figures,
                rules(figures));
    }

    private static List<Rule> rules(Figures figures) {
        return List.of(
                new LandThreeYears(sheet("land-three-years"), figures),
                new SplitOperation(sheet("split-operation"), figures),
                new SeedOrganic(sheet("seed-organic")),
                new SeedRecorded(sheet("seed-recorded")),
                new SeedlingsOrganic(sheet("seedlings-organic")),
                new ManureInterval(sheet("manure-interval"), figures),
                new CompostProcess(sheet("compost-process"), figures),
                new CompostFda(sheet("compost-fda"), figures),
                new MaterialListed(sheet("material-listed"), figures),
                new SprayNeed(sheet("spray-need")),
                new SprayInterval(sheet("spray-interval")),
                new RotationFamily(sheet("rotation-family")),
                new MulchRemoved(sheet("mulch-removed")),
                new MulchListed(sheet("mulch-listed")),
                new TarpHarrowed(sheet("tarp-harrowed")),
                new LotOversold(sheet("lot-oversold")),
                new DoesNotFit(sheet("does-not-fit")));
    }

    private static RuleSheet sheet(String id) {
        return RuleSheet.read(BOOK, id);
    }

    private static Properties properties() {
        Properties book = new Properties();
        String name = BOOK + "/book.properties";
        try (Reader in = new InputStreamReader(
                Objects.requireNonNull(UsRules.class.getResourceAsStream(name), name), StandardCharsets.UTF_8)) {
            book.load(in);
            return book;
        } catch (IOException broken) {
            throw new UncheckedIOException(name, broken);
        }
    }

    private UsRules() {}
}

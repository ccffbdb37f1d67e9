package bedledger.projections.trace;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.SeasonBook;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** From seed, trays, land, compost and materials to where each kilo went, and back. */
class TraceTest {
    private static final LocalDate END = LocalDate.parse("2026-12-31");
    private final SeasonBook book = new SeasonBook();

    @BeforeEach
    void leeksByWayOfTraysAndBeetsFromSeed() {
        book.on("2025-02-01").did("register-field", "field=North", "gross=0.05ha");
        book.did("lay-out", "beds=N1 N2", "field=North", "length=20m", "width=0.75m");
        book.did("declare-land", "field=North", "none-since=2012-01-01", "evidence=affidavit");
        book.on("2025-03-01").did("receive-seed", "seed-lot=LE-1", "crop=leek", "quantity=10g", "supplier=Hill Seeds");
        book.did("receive-seed", "seed-lot=BE-1", "crop=beet", "quantity=100g");
        book.did("list-material", "material=Own mix", "approval=letter");
        book.did("list-material", "material=Peat moss");
        book.did("list-material", "material=Bt powder");
        book.did("build-pile", "pile=P1", "method=windrow", "carbon-to-nitrogen=30");
        book.did("make-mix", "mix=Own mix", "materials=Peat moss", "pile=P1");
        book.on("2025-03-10").did("sow-trays", "batch=T-1", "crop=leek", "seed-lot=LE-1", "potting-mix=Own mix");
        book.on("2025-05-01").did("spread", "beds=N1", "pile=P1", "quantity=100kg");
        book.on("2025-05-02").did("transplant", "beds=N1", "crop=leek", "origin=own", "trays=T-1", "plants=90");
        book.did("sow", "beds=N2", "crop=beet", "seed-lot=BE-1", "quantity=40g");
        book.on("2025-07-01").did("spray", "beds=N1", "product=Bt powder", "quantity=10g");
        book.on("2025-08-01").did("harvest", "beds=N1", "crop=leek", "quantity=40kg", "lot=2025/L-1");
        book.on("2025-08-10").did("spread", "beds=N1", "manure=horse", "quantity=10kg");
        book.on("2025-09-01").did("harvest", "beds=N1", "crop=leek", "quantity=30kg", "lot=2025/L-2", "last=yes");
        book.on("2025-09-02").did("harvest", "beds=N2", "crop=beet", "quantity=50kg", "lot=2025/B-1");
        book.on("2025-09-03").did("wash", "lots=2025/L-2", "water=well");
        book.on("2025-09-04").did("join-lots", "lots=2025/L-1=20kg 2025/L-2=30kg", "into=2025/L-S");
        book.on("2025-09-05").did("sell", "lots=2025/L-S=25kg 2025/B-1=10kg", "as=organic", "invoice=77", "buyer=shop");
        book.on("2025-09-06").did("donate", "lots=2025/L-1=5kg", "to=pantry");
        book.did("lose", "lots=2025/L-S=2kg", "cause=rot", "to=compost");
        book.on("2025-09-07").did("take-back", "lots=2025/L-S=1kg", "invoice=77");
        book.on("2025-09-30").did("count", "crop=leek", "quantity=38kg");
    }

    private Trace trace(String id) {
        Graph graph = Graph.of(book.farm(), END);
        return Trace.of(graph, graph.node(id).orElseThrow());
    }

    private static Stream<Branch> all(Branch branch) {
        return Stream.concat(Stream.of(branch), branch.branches().stream().flatMap(TraceTest::all));
    }

    private static List<String> names(Branch branch) {
        return all(branch).map(each -> each.node().name()).distinct().toList();
    }

    private static List<String> steps(Branch branch) {
        return all(branch)
                .flatMap(each -> each.by().stream().map(link -> each.node().name() + " <" + link.words() + ">"))
                .toList();
    }

    @Test
    void leadsFromAnInvoiceBackToSeedLandAndCompost() {
        assertThat(names(trace("invoice:77").back()))
                .contains(
                        "lot 2025/L-S",
                        "lot 2025/L-1",
                        "lot 2025/L-2",
                        "leek planted 2025-05-02",
                        "trays T-1",
                        "seed lot LE-1",
                        "Own mix",
                        "Peat moss",
                        "compost P1 spread 2025-05-01",
                        "pile P1",
                        "Bt powder sprayed 2025-07-01",
                        "washed 2025-09-03",
                        "bed N1",
                        "field North",
                        "lot 2025/B-1",
                        "seed lot BE-1");
    }

    @Test
    void whatWasPutOnABedAfterAPickHasNothingToDoWithIt() {
        assertThat(names(trace("lot:2025/L-1").back())).doesNotContain("raw manure, horse spread 2025-08-10");
        assertThat(names(trace("lot:2025/L-2").back())).contains("raw manure, horse spread 2025-08-10");
        assertThat(names(trace("bed:N1").back())).contains("raw manure, horse spread 2025-08-10", "field North");
        assertThat(names(trace("bed:N2").back())).doesNotContain("raw manure, horse spread 2025-08-10");
    }

    @Test
    void afterThreeYearsItIsForgotten() {
        book.on("2025-10-01").did("sow", "beds=N1", "crop=garlic");
        book.on("2028-04-30").did("harvest", "beds=N1", "crop=garlic", "quantity=5kg", "lot=2028/G-1");
        book.on("2028-05-01").did("harvest", "beds=N1", "crop=garlic", "quantity=5kg", "lot=2028/G-2");
        Graph graph = Graph.of(book.farm(), LocalDate.parse("2028-12-31"));

        assertThat(names(Trace.of(graph, graph.node("lot:2028/G-1").orElseThrow())
                        .back()))
                .contains("compost P1 spread 2025-05-01");
        assertThat(names(Trace.of(graph, graph.node("lot:2028/G-2").orElseThrow())
                        .back()))
                .doesNotContain("compost P1 spread 2025-05-01")
                .contains("raw manure, horse spread 2025-08-10");
    }

    @Test
    void leadsFromSeedForwardToWhereEachKiloWent() {
        assertThat(steps(trace("seedLot:LE-1").forward()))
                .contains(
                        "trays T-1 <>",
                        "leek planted 2025-05-02 <90 plants>",
                        "lot 2025/L-S <20 kg>",
                        "lot 2025/L-S <30 kg>",
                        "invoice 77 <25 kg>",
                        "given away 2025-09-06 <5 kg>",
                        "lost 2025-09-06 <2 kg>",
                        "taken back 2025-09-07 <1 kg>",
                        "store of leek <15 kg left on paper>",
                        "store of leek <24 kg left on paper>");
        assertThat(names(trace("seedLot:LE-1").forward())).doesNotContain("lot 2025/B-1", "seed lot BE-1");
    }

    @Test
    void leadsFromAMaterialByWayOfTheMixToTheLots() {
        assertThat(names(trace("material:Peat moss").forward()))
                .contains("Own mix", "trays T-1", "lot 2025/L-1", "invoice 77");
        assertThat(names(trace("pile:P1").forward()))
                .contains("Own mix", "compost P1 spread 2025-05-01", "lot 2025/L-2");
        assertThat(names(trace("tray:T-1").back())).contains("seed lot LE-1", "Own mix", "Peat moss", "pile P1");
        assertThat(names(trace("tray:T-1").forward())).contains("invoice 77");
    }

    /** What leads back from B to A leads forward from A to B. */
    @Test
    void isTheSameBothWays() {
        Graph graph = Graph.of(book.farm(), END);
        for (Node start : graph.nodes()) {
            for (Branch before : all(Trace.of(graph, start).back()).toList()) {
                boolean onlyOnTheBed =
                        start.kind() == Node.Kind.BED && !before.node().kind().equals(Node.Kind.FIELD);
                if (!onlyOnTheBed) {
                    assertThat(all(Trace.of(graph, before.node()).forward()).map(Branch::node))
                            .as("%s from %s", start.name(), before.node().name())
                            .contains(start);
                }
            }
        }
    }

    @Test
    void knowsOnlyWhatWasDoneByTheDayAsked() {
        Graph graph = Graph.of(book.farm(), LocalDate.parse("2025-08-31"));
        assertThat(graph.node("lot:2025/L-2")).isEmpty();
        assertThat(names(Trace.of(graph, graph.node("seedLot:LE-1").orElseThrow())
                        .forward()))
                .contains("lot 2025/L-1")
                .doesNotContain("lot 2025/L-S", "invoice 77");
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {3, 20, 411})
    void isTheSameInWhateverOrderEntriesAreHandedIn(long seed) {
        List<Entry> shuffled = new ArrayList<>(book.entries());
        Collections.shuffle(shuffled, new Random(seed));
        Graph one = Graph.of(book.farm(), END);
        Graph other = Graph.of(Farm.of(shuffled), END);
        assertThat(other.nodes()).containsExactlyElementsOf(one.nodes());
        one.nodes().forEach(node -> assertThat(other.from(node.id())).isEqualTo(one.from(node.id())));
    }
}

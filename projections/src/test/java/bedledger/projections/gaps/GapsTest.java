package bedledger.projections.gaps;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Entry;
import bedledger.language.SeasonBook;
import bedledger.projections.gaps.Gap.Topic;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is not there is named with the command that would answer it, and is gone once that is written. */
class GapsTest {
    private static final Set<String> HEAD = Set.of("on", "why", "done-by");
    private final SeasonBook book = new SeasonBook();

    @BeforeEach
    void aYear() {
        book.on("2025-02-01").did("register-field", "field=North", "gross=0.05ha");
        book.did("lay-out", "beds=N1 N2 N3", "field=North", "length=20m", "width=0.75m");
        book.did("found", "beds=N1 N2 N3", "nothing=yes");
        book.on("2025-03-01").did("receive-seed", "seed-lot=LE-1", "crop=leek", "quantity=10g", "organic=yes");
        book.did(
                "receive-seed",
                "seed-lot=OA-1",
                "crop=oat",
                "quantity=5kg",
                "supplier=Mill",
                "receipt=7",
                "organic=no");
        book.did("list-material", "material=Feather meal", "approval=letter");
        book.did("receive-material", "material=Feather meal", "quantity=50kg");
        book.did("build-pile", "pile=P1");
        book.on("2025-05-01").did("transplant", "beds=N1", "crop=leek", "origin=own", "seed-lot=LE-1");
        book.did("spread", "beds=N1 N2", "material=Feather meal", "per-bed=2kg");
        book.did("spread", "beds=N1", "pile=P1", "quantity=120kg");
        book.on("2025-09-01").did("harvest", "beds=N1", "crop=leek", "quantity=40kg", "lot=2025/LE-A");
        book.on("2025-09-10").did("harvest", "beds=N1", "crop=leek", "quantity=30kg", "lot=2025/LE-B", "last=yes");
        book.on("2025-09-12").did("sell", "lots=2025/LE-A=25kg", "as=organic");
    }

    private List<Gap> gaps() {
        return Gaps.of(book.farm(), LocalDate.parse("2025-01-01"), LocalDate.parse("2025-12-31"))
                .all();
    }

    private Optional<Gap> about(Topic topic, String words) {
        return gaps().stream()
                .filter(gap -> gap.topic() == topic && (gap.subject() + ": " + gap.says()).contains(words))
                .findFirst();
    }

    @Test
    void readsInTheOrderOfAnInspector() {
        assertThat(gaps().stream().map(Gap::topic).distinct())
                .containsExactly(
                        Topic.LAND,
                        Topic.SEED,
                        Topic.INPUTS,
                        Topic.BEDS,
                        Topic.HARVEST,
                        Topic.SALES,
                        Topic.PEOPLE,
                        Topic.RECORD);
    }

    @Test
    void namesBedsOfWhichNothingIsWrittenAllYear() {
        assertThat(about(Topic.BEDS, "No work").orElseThrow().subject()).isEqualTo("bed N3");
        book.on("2025-10-01").did("sample-soil", "beds=N1 N2 N3", "from-depth=0cm", "to-depth=20cm");
        assertThat(about(Topic.BEDS, "No work")).isPresent();
        book.on("2025-10-02").did("found", "beds=N3", "nothing=yes");
        assertThat(about(Topic.BEDS, "No work")).isEmpty();
    }

    @Test
    void namesLotsWithoutAnOutletByCrop() {
        Gap gap = about(Topic.HARVEST, "no outlet").orElseThrow();
        assertThat(gap.subject() + ": " + gap.says())
                .isEqualTo(
                        "leek: 30 kg in 1 lot has no outlet: not sold, given away, lost or counted out (2025/LE-B).");
        assertThat(gap.command()).startsWith("did sell 2025/LE-B=30kg ");
        book.on("2025-09-20").did("join-lots", "lots=2025/LE-A=15kg 2025/LE-B=30kg", "into=2025/LE-AB");
        assertThat(about(Topic.HARVEST, "no outlet").orElseThrow().says()).startsWith("45 kg in 1 lot");
        book.on("2025-09-21").did("lose", "lots=2025/LE-AB=45kg", "cause=frost", "to=compost");
        assertThat(gaps().stream().filter(left -> left.subject().equals("leek")))
                .isEmpty();
    }

    @Test
    void asksForTheWordThatSeedIsNotEngineeredWhereItIsNotOrganic() {
        Gap gap = about(Topic.SEED, "genetically engineered").orElseThrow();
        assertThat(gap.subject()).isEqualTo("seed lot OA-1, oat");
        assertThat(gap.command()).contains("--not-engineered");
    }

    @Test
    void namesACoverThatLiesOnABedWorkedSince() {
        book.on("2025-05-02").did("cover", "beds=N1 N2", "material=net");
        assertThat(about(Topic.BEDS, "no entry takes it off")).isEmpty();
        book.on("2025-09-20").did("flail", "beds=N1");
        Gap gap = about(Topic.BEDS, "no entry takes it off").orElseThrow();
        assertThat(gap.subject()).isEqualTo("bed N1, net");
        book.on("2025-09-19").did("uncover", "beds=N1");
        assertThat(about(Topic.BEDS, "no entry takes it off")).isEmpty();
    }

    @Test
    void asksForACountOfWhatIsLeftOnPaper() {
        assertThat(about(Topic.HARVEST, "Left on paper").orElseThrow().says())
                .isEqualTo(
                        "Left on paper: 15 kg (2025/LE-A). After the last move, on 2025-09-12, no count is on record.");
        book.on("2025-09-30").did("count", "crop=leek", "quantity=44kg");
        assertThat(about(Topic.HARVEST, "Left on paper")).isEmpty();
    }

    @Test
    void namesSeedThatWasNotSown() {
        Gap gap = about(Topic.SEED, "no sowing").orElseThrow();
        assertThat(gap.subject()).isEqualTo("seed lot OA-1, oat");
        book.on("2025-10-01").did("sow-cover", "beds=N3", "crop=oat", "seed-lot=OA-1", "quantity=1kg");
        assertThat(about(Topic.SEED, "no sowing")).isEmpty();
    }

    @Test
    void asksHowOwnPlantsWereRaised() {
        Gap gap = about(Topic.SEED, "potting mix").orElseThrow();
        assertThat(gap.command()).startsWith("did sow-trays TRAYS --crop leek --seed-lot LE-1");
        Entry set = book.farm()
                .ofKind(bedledger.language.Planting.Transplanted.class)
                .get(0);
        book.on("2025-03-10").did("sow-trays", "batch=T-1", "crop=leek", "seed-lot=LE-1", "trays=2", "cells=50");
        book.correct(set, "left out", "transplant", "beds=N1", "crop=leek", "origin=own", "trays=T-1", "plants=80");
        assertThat(about(Topic.SEED, "potting mix").orElseThrow().subject()).isEqualTo("leek trays T-1");
    }

    @Test
    void asksWhereTheRestOfAMaterialIs() {
        assertThat(about(Topic.INPUTS, "Feather meal").orElseThrow().says())
                .isEqualTo("50 kg came in, 4 kg is recorded as used: where 46 kg is, is not recorded.");
        book.on("2025-12-01").did("count-material", "material=Feather meal", "quantity=45kg");
        assertThat(about(Topic.INPUTS, "Feather meal")).isEmpty();
    }

    @Test
    void asksWhereTheCompostWent() {
        assertThat(about(Topic.INPUTS, "pile P1").orElseThrow().says())
                .isEqualTo("How much compost it made is not recorded; 120 kg of it was spread.");
        book.on("2025-06-01").did("finish-pile", "pile=P1", "weight=500kg");
        assertThat(about(Topic.INPUTS, "pile P1").orElseThrow().says())
                .isEqualTo("500 kg of compost, 120 kg of it was spread: where 380 kg went is not recorded.");
    }

    @Test
    void saysWhereNothingIsWrittenOfEquipmentAndPeople() {
        assertThat(gaps().stream().filter(gap -> gap.topic() == Topic.PEOPLE).map(Gap::subject))
                .containsExactly("harvest containers", "scales", "sprayer", "training");
        book.on("2025-04-01").did("clean", "what=Harvest crates and sprayer");
        book.did("calibrate", "what=market scale");
        book.did("train", "who=kim", "topic=knives");
        assertThat(gaps().stream().filter(gap -> gap.topic() == Topic.PEOPLE)).isEmpty();
    }

    @Test
    void keepsAConditionOpenUntilItIsAnswered() {
        Entry inspection = book.on("2025-11-01")
                .did(
                        "note-inspection",
                        "inspector=R. Field",
                        "conditions=C1 by 2025-12-01: label bins; C2 by 2026-01-01: map");
        Entry corrected = book.correct(
                inspection,
                "the second was C3",
                "note-inspection",
                "inspector=R. Field",
                "conditions=C1 by 2025-12-01: label bins; C3 by 2026-01-01: map");
        book.on("2025-11-05")
                .did("answer-condition", "condition=C1", "inspection=" + inspection.number(), "how=labelled");

        assertThat(gaps().stream().map(Gap::subject))
                .contains("condition C3 of inspection #" + corrected.number())
                .noneMatch(subject -> subject.startsWith("condition C1") || subject.startsWith("condition C2"));
    }

    /** Every act, option and command that is named is there. */
    @Test
    void everyCommandCanBeTyped() {
        Pattern option = Pattern.compile("--([a-z-]+)");
        for (Gap gap : gaps()) {
            assertThat(gap.says()).endsWith(".");
            for (String command : gap.command().split("; then |, or |; or did ", -1)) {
                String[] words = command.split(" ", -1);
                if (words[0].equals("did")) {
                    ActKind kind = Acts.byWord(words[1]).orElseThrow(() -> new AssertionError(command));
                    Matcher options = option.matcher(command);
                    while (options.find()) {
                        assertThat(Stream.concat(
                                        HEAD.stream(), kind.asks().stream().map(ask -> ask.option())))
                                .as(command)
                                .contains(options.group(1));
                    }
                }
            }
        }
    }
}

package bedledger.cli.write;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.cli.Bedledger;
import bedledger.cli.Surroundings;
import bedledger.cli.read.Asking;
import bedledger.domain.ActIds;
import bedledger.domain.Book;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Lineage;
import bedledger.language.LotId;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.BookReader;
import bedledger.projections.findings.Eligibility;
import bedledger.projections.findings.Findings;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.findings.Settings;
import bedledger.projections.tables.Tables;
import java.io.ByteArrayInputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is gathered behind some lots says the same of them as the whole journal. */
class BehindLotsTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-01-02T15:00:00Z"), ZoneOffset.UTC);
    private static final LocalDate DAY = LocalDate.parse("2026-01-02");
    private static final List<String> FARM = List.of(
            "register-field North --gross 0.05ha --on 2022-01-05",
            "lay-out N1..N6 --field North --length 20m --width 0.75m --on 2022-01-05",
            "found North --nothing --on 2022-01-05",
            "receive-seed A-1 --crop carrot --quantity 900g --organic no --treatment untreated --suppliers-asked 0 --on 2022-01-06",
            "receive-seed B-1 --crop kale --quantity 900g --organic yes --certificate c --receipt 2 --on 2022-01-06",
            "list-material \"Kelp meal\" --approval letter --on 2022-06-06",
            "list-material \"Own mix\" --on 2022-01-06",
            "build-pile P1 --method windrow --ingredients \"sheep manure, straw\" --animal-material yes --on 2022-01-06",
            "build-pile P2 --method windrow --ingredients \"leaves, straw\" --animal-material no --on 2022-01-06",
            "make-mix \"Own mix\" --materials \"Kelp meal\" --pile P1 --on 2022-01-07",
            "declare-land North --none-since 2012-01-01 --evidence letter --on 2022-01-07",
            "sow N1 N2 --crop carrot --seed-lot A-1 --quantity 9g --on 2022-02-20",
            "sow N3 --crop carrot --quantity 9g --on 2022-02-20",
            "sow N4 N5 N6 --crop kale --seed-lot B-1 --quantity 9g --on 2022-02-20");

    @TempDir
    Path folder;

    private int run(String input, String... words) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        return new Bedledger(new Surroundings(
                        folder,
                        Map.of("XDG_CONFIG_HOME", folder.resolve("settings").toString()),
                        CLOCK,
                        RandomGeneratorFactory.of("L64X128MixRandom").create(7),
                        new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                        nowhere,
                        nowhere,
                        false))
                .run(words);
    }

    private Book open() {
        return Book.open(
                new BookFolder(folder.resolve("farm")),
                CLOCK,
                new ActIds(RandomGeneratorFactory.of("L64X128MixRandom").create(8)));
    }

    private static List<String> told(Collection<Entry> entries, LotId lot, String rules) {
        Farm farm = Farm.of(entries);
        RuleBook book = RuleBook.of(rules).orElseThrow();
        Findings findings = Findings.of(farm, book, Settings.defaults(), Asking.facts(Tables.bundled()), DAY);
        Eligibility lotted = Eligibility.of(lot, Lineage.of(farm, DAY), findings);
        List<String> told = new ArrayList<>(lotted.reasons().stream()
                .map(finding -> finding.rule() + " " + finding.outcome() + " " + finding.subject())
                .sorted()
                .toList());
        told.add(lotted.worst().toString());
        return told;
    }

    /** How many lots were compared, and how many entries were gathered for them at most. */
    private int comparedAll() {
        try (Book book = open()) {
            List<Entry> whole =
                    BookReader.of(new BookFolder(folder.resolve("farm"))).entries();
            List<LotId> lots = Farm.of(whole).lots();
            for (LotId lot : lots) {
                Collection<Entry> behind = BehindLots.of(book, List.of(lot)).orElseThrow();
                Map<Long, Entry> gathered = new TreeMap<>();
                behind.forEach(entry -> gathered.put(entry.number(), entry));
                BehindLots.everywhere()
                        .flatMap(kind -> book.ofKind(kind).stream())
                        .forEach(entry -> gathered.putIfAbsent(entry.number(), entry));
                for (String rules : List.of("us", "eu")) {
                    assertThat(told(gathered.values(), lot, rules))
                            .as(lot + " " + rules)
                            .isEqualTo(told(whole, lot, rules));
                }
            }
            return lots.size();
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void sayTheSameOfLotsInAnInventedFarm(long seed) {
        run("", "new", "farm", "--farm", "Ash Corner", "--practice", "--written", "2022-01-05");
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        StringBuilder lines = new StringBuilder(String.join("\n", FARM)).append('\n');
        List<String> lots = new ArrayList<>();
        LocalDate day = LocalDate.parse("2022-03-01");
        for (int act = 0; act < 220; act++) {
            day = day.plusDays(random.nextInt(9));
            lines.append(act(random, lots, act)).append(" --on ").append(day).append('\n');
        }
        run(lines.toString(), "did", "-", "--book", "farm", "--written", "2026-01-02");
        assertThat(comparedAll()).isGreaterThan(15);
    }

    private static String act(RandomGenerator random, List<String> lots, int number) {
        boolean carrot = random.nextBoolean();
        String crop = carrot ? "carrot" : "kale";
        int first = carrot ? 1 : 4;
        String bed = "N" + (first + random.nextInt(3));
        String two = bed + " N" + (first + random.nextInt(3));
        return switch (random.nextInt(16)) {
            case 0 ->
                "sow " + two + " --crop " + crop + " --quantity 9g"
                        + (random.nextBoolean() ? " --seed-lot " + (carrot ? "A-1" : "B-1") : "");
            case 1 ->
                "sow-trays T-" + number + " --crop kale --seed-lot B-1 --trays 2 --cells 128"
                        + (random.nextBoolean() ? " --potting-mix \"Own mix\"" : "");
            case 2 -> "spread " + two + " --pile P" + (1 + random.nextInt(2)) + " --quantity 40kg";
            case 3 -> "spread " + bed + " --material \"Kelp meal\" --quantity 2kg";
            case 4 -> "spray " + two + " --product \"Kelp meal\" --quantity 1L --pre-harvest 7d";
            case 5 -> "weed " + two;
            case 6 -> "take-sample S-" + number + " --beds " + bed + " --of leaves";
            case 7 -> "clean --what crates --how hose --after kale";
            default -> harvested(random, lots, number, two, crop);
        };
    }

    private static String harvested(RandomGenerator random, List<String> lots, int number, String beds, String crop) {
        int kind = random.nextInt(10);
        if (kind < 4 || lots.size() < 4) {
            String lot = "H-" + number;
            lots.add(lot);
            return "harvest " + beds + " --crop " + crop + " --quantity 20kg --lot " + lot;
        }
        String one = lots.get(random.nextInt(lots.size()));
        String other = lots.get(random.nextInt(lots.size()));
        String made = "J-" + number;
        if (kind < 7) {
            lots.add(made);
        }
        return switch (kind) {
            case 4, 5 -> "join-lots " + one + "=4kg " + other + "=4kg --into " + made;
            case 6 -> "split-lot " + one + " --into " + made + "=3kg";
            case 7 ->
                "sell " + one + "=9kg " + other + "=2kg --as " + (number % 3 == 0 ? "not-organic" : "organic")
                        + " --invoice " + number;
            case 8 ->
                "pack " + one + " --packs 4boxes --size 2kg --containers used"
                        + (random.nextBoolean() ? " --held-before \"own beets\"" : "");
            default -> "wash " + one + " " + other + " --water well --sanitizer \"Kelp meal\"";
        };
    }

    /** Which lot was picked after which then matters, and the whole journal is read. */
    @Test
    void areNotGatheredWhereLandMayNotBeClean() {
        run("", "new", "farm", "--farm", "Ash Corner", "--practice", "--written", "2022-01-05");
        String lines = String.join("\n", FARM)
                + "\ndeclare-land North --last-applied 2021-06-01 --substance glyphosate --on 2022-01-06\n"
                + "harvest N4 --crop kale --quantity 3kg --lot K-1 --on 2022-06-01\n";
        run(lines, "did", "-", "--book", "farm", "--written", "2026-01-02");
        try (Book book = open()) {
            List<LotId> lots = Farm.of(BookReader.of(new BookFolder(folder.resolve("farm")))
                            .entries())
                    .lots();
            assertThat(lots).hasSize(1);
            assertThat(BehindLots.of(book, lots)).isEqualTo(Optional.empty());
        }
    }
}

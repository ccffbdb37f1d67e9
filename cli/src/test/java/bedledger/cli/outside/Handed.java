package bedledger.cli.outside;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.cli.Bedledger;
import bedledger.cli.Surroundings;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.random.RandomGeneratorFactory;

/** A small invented season with lots joined, split, packed, sold, lost, corrected and struck, and what is handed out of it. */
record Handed(Path folder) {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-01-02T15:00:00Z"), ZoneOffset.UTC);
    private static final String SEASON = """
            register-field North --gross 0.05ha --on 2025-03-01 --written 2025-03-01
            lay-out N1..N4 --field North --length 20m --width 0.75m --on 2025-03-01
            declare-land North --none-since 2012-01-01 --evidence "own records" --on 2025-03-01
            spread N1,N2 --manure goat --quantity 60kg --on 2025-04-01 --written 2025-04-01
            incorporate N1,N2 --implement "power harrow" --depth 8cm --on 2025-04-02 --written 2025-04-02
            harrow N3 --implement "tine harrow" --depth 5cm --on 2025-04-02
            transplant N3,N4 --crop lettuce --origin own --plants 300 --on 2025-04-20 --written 2025-04-20
            mulch N1 --kind straw --on 2025-05-20 --written 2025-05-20
            sow N1,N2 --crop carrot --per-bed 20g --on 2025-05-21 --written 2025-05-21
            harvest N3,N4 --crop lettuce --quantity 250heads --lot LET-A --at 7:30 --last yes --on 2025-06-10 --written 2025-06-10
            harvest N1,N2 --crop carrot --quantity 90kg --lot CAR-A --on 2025-09-01 --written 2025-09-01
            harvest N1 --crop carrot --quantity 55lb --lot CAR-B --on 2025-09-05 --written 2025-09-05
            harvest N2 --crop carrot --quantity 2bu --lot CAR-C --on 2025-09-06 --written 2025-09-06
            join-lots CAR-A=20kg CAR-B=10kg --into CAR-STORE --on 2025-09-10 --written 2025-09-10
            split-lot CAR-STORE --into CAR-S1=5kg,CAR-S2=6kg --why graded --on 2025-09-11 --written 2025-09-11
            pack CAR-A --packs 10boxes --size 5kg --on 2025-09-12 --written 2025-09-12
            store CAR-S1 --where cellar --quantity 5kg --on 2025-09-12
            sell CAR-A=40kg LET-A=100heads --as organic --buyer "Café & Sons, town" --invoice "77/2025" --on 2025-09-15 --written 2025-09-15
            donate CAR-A=5kg --to "food pantry" --on 2025-09-16 --written 2025-09-16
            take-back CAR-A=2kg --invoice "77/2025" --why "split roots" --on 2025-09-20 --written 2025-09-20
            lose CAR-S2=1kg --cause culled --to compost --on 2025-09-21 --written 2025-09-21
            count carrot --quantity 30kg --on 2025-09-30 --written 2025-09-30
            found-lot 2024/ON-1 --crop onion --quantity 3kg --on 2025-10-01 --written 2025-10-01
            note-inspection --inspector "R. Field" --conditions "C1 by 2026-02-10: label the bins, é \\\\ and all, each one, in the cellar too" --on 2025-11-12 --written 2025-11-12
            """;

    static Handed season(Path folder) {
        Handed handed = new Handed(folder);
        handed.run(
                "",
                "new",
                "farm",
                "--farm",
                "Fern; Gully, Farm",
                "--practice",
                "--time-zone",
                "America/New_York",
                "--written",
                "2025-03-01");
        handed.run(SEASON, "did", "-", "--book", "farm");
        handed.run(
                "",
                "correct",
                "12",
                "--why",
                "misread",
                "--quantity",
                "92kg",
                "--written",
                "2025-11-13",
                "--book",
                "farm");
        handed.run("", "strike", "20", "--why", "never happened", "--written", "2025-11-13", "--book", "farm");
        return handed;
    }

    String export(String kind, String... more) {
        String[] words = new String[5 + more.length];
        System.arraycopy(new String[] {"export", "--as", kind, "--book", "farm"}, 0, words, 0, 5);
        System.arraycopy(more, 0, words, 5, more.length);
        return run("", words);
    }

    String run(String input, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings around = new Surroundings(
                folder,
                Map.of("HOME", folder.toString()),
                CLOCK,
                RandomGeneratorFactory.of("L64X128MixRandom").create(31),
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        int code = new Bedledger(around).run(words);
        assertThat(code).as(err.toString(StandardCharsets.UTF_8)).isZero();
        return out.toString(StandardCharsets.UTF_8);
    }
}

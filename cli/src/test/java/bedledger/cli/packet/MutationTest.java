package bedledger.cli.packet;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.cli.packet.InspectView.Inspected;
import bedledger.ledger.packet.MemberNames;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Packets changed at random, in their files and in the bytes of the zip.
 *
 * <p>Whether a change means anything is told by the JDK's own zip reader: do names and contents of the files differ from the good
 * packet's? Every one that does must be refused with the place named; none may crash, or take long.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MutationTest {
    private static final long SLOWEST = Duration.ofSeconds(20).toMillis();

    private final Path folder;
    private final Map<String, byte[]> good;
    private final byte[] whole;
    private final Given nothing = new Given(List.of(), List.of(), List.of(), false, false);
    private final Given kept;
    private final Map<String, Integer> counts = new TreeMap<>();

    MutationTest(@TempDir Path folder) throws IOException {
        this.folder = folder;
        SampleFarm farm = new SampleFarm(folder, "sample.key").season(SampleFarm.season());
        Path packet = farm.packet("--since", "kept.txt");
        this.whole = Files.readAllBytes(packet);
        this.good = Repacked.of(packet).members();
        this.kept = new Given(
                List.of(Files.readString(farm.file("kept.txt"))), List.of(farm.verifierKey()), List.of(), false, false);
    }

    @ParameterizedTest(name = "400 changes, seed {0}")
    @ValueSource(longs = 2025)
    void everyChangeOfMeaningIsRefusedWithThePlaceNamed(long seed) throws IOException {
        mutate(seed, 400);
    }

    @Tag("slow")
    @ParameterizedTest(name = "500 changes, seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void everyOneOfTenThousand(long seed) throws IOException {
        mutate(seed, 500);
    }

    private void mutate(long seed, int many) throws IOException {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        Path file = folder.resolve("mutated.zip");
        counts.clear();
        long slowest = 0;
        for (int at = 0; at < many; at++) {
            String kind = random.nextInt(3) == 0
                    ? Mutations.ofBytes(whole, file, random)
                    : Mutations.ofMembers(good, file, random);
            long before = System.nanoTime();
            Inspected found = PacketFile.inspect("mutated.zip", file, random.nextBoolean() ? nothing : kept);
            slowest = Math.max(
                    slowest, Duration.ofNanos(System.nanoTime() - before).toMillis());
            judge("seed " + seed + ", change " + at + ", " + kind, file, found);
        }
        assertThat(slowest).as("milliseconds of the slowest").isLessThan(SLOWEST);
        assertThat(counts.getOrDefault("refused", 0)).as("%s", counts).isGreaterThan(many / 2);
        org.junit.platform.commons.logging.LoggerFactory.getLogger(MutationTest.class)
                .info(() -> "seed " + seed + ": " + counts);
    }

    private void judge(String what, Path file, Inspected found) {
        boolean same = sameMembers(file);
        if (found.agrees()) {
            assertThat(same).as(what + " agrees, so nothing may differ").isTrue();
            count("agrees, nothing differs");
            return;
        }
        count(same ? "refused though nothing differs for the JDK" : "refused");
        Difference first = found.disagreements().get(0);
        assertThat(first.where()).as(what).isNotBlank();
        assertThat(first.found()).as(what).isNotBlank();
        assertThat(first.found()).as(what).doesNotContain("Exception");
        count("first: " + first.fault());
    }

    private void count(String what) {
        counts.merge(what, 1, Integer::sum);
    }

    /** The JDK's reader takes a zip by its directory; where it cannot read one, the packet differs. */
    private boolean sameMembers(Path file) {
        Map<String, byte[]> there = new TreeMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            Enumeration<? extends ZipEntry> entries = zip.entries();
            while (entries.hasMoreElements()) {
                ZipEntry entry = entries.nextElement();
                try (InputStream in = zip.getInputStream(entry)) {
                    there.put(entry.getName(), in.readAllBytes());
                }
            }
        } catch (IOException | IllegalArgumentException unreadable) {
            return false;
        }
        // A packet without the proof is one that was asked for without --since: nothing else in it differs.
        there.putIfAbsent(MemberNames.CONSISTENCY, good.getOrDefault(MemberNames.CONSISTENCY, new byte[0]));
        return there.keySet().equals(good.keySet())
                && there.entrySet().stream().allMatch(each -> Arrays.equals(each.getValue(), good.get(each.getKey())));
    }
}

package bedledger.cli.packet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedledger.cli.Exit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Packets made to harm: each is refused with the place named, in little time and memory, and nothing is written anywhere. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(60)
class HostilePacketTest {
    private static final String HASH = "0".repeat(64);
    private static final byte[] X = {'x'};

    private final Path folder;
    private final Path good;

    HostilePacketTest(@TempDir Path folder) throws IOException {
        this.folder = Files.createDirectories(folder.resolve("desk/inner"));
        this.good = new SampleFarm(this.folder, "sample.key")
                .season(SampleFarm.season())
                .packet();
    }

    private static RawZip zip() {
        return new RawZip();
    }

    private static byte[] named(String name) {
        return zip().add("README.txt", X).add(name, X).bytes();
    }

    private static byte[] with(Consumer<RawZip> lie) {
        RawZip zip = zip();
        lie.accept(zip);
        return zip.deflated("lines.jsonl", "{}\n".repeat(30).getBytes(UTF_8)).bytes();
    }

    /** The file, and what the refusal must say. */
    private Map<String, Map.Entry<byte[], String>> packets() throws IOException {
        Map<String, Map.Entry<byte[], String>> all = new LinkedHashMap<>();
        names(all);
        containers(all);
        byte[] whole = Files.readAllBytes(good);
        put(all, "nothing", new byte[0], "whole zip");
        put(all, "no zip", "The lines of the farm.\n".repeat(20).getBytes(UTF_8), "whole zip");
        put(all, "half a packet", Arrays.copyOf(whole, whole.length / 2), "whole zip");
        put(
                all,
                "a packet with its head cut off",
                Arrays.copyOfRange(whole, 9, whole.length),
                "a place that is not its own");
        put(all, "bytes behind the end", Arrays.copyOf(whole, whole.length + 5), "whole zip");
        byte[] before = new byte[whole.length + 7];
        System.arraycopy(whole, 0, before, 7, whole.length);
        put(all, "bytes before the beginning", before, "a place that is not its own");
        return all;
    }

    private static void names(Map<String, Map.Entry<byte[], String>> all) {
        put(all, "a name that climbs", named("../../evil.txt"), "'../../evil.txt': found a name that leads out");
        put(all, "a name that climbs within", named("documents/../../evil"), "leads out of the packet");
        put(all, "a name that climbs in Windows", named("..\\evil.txt"), "leads out of the packet");
        put(all, "an absolute name", named("/etc/evil"), "'/etc/evil': found a name that leads out");
        put(all, "a drive", named("C:evil"), "leads out of the packet");
        put(all, "a zip in the zip", named("packet.zip"), "'packet.zip': found a name that no packet has");
        put(all, "a name in another case", named("LINES.jsonl"), "a name that no packet has");
        put(all, "an empty name", named(""), "a name that no packet has");
        put(all, "a name with a zero byte", named("lines.jsonl\0.txt"), "'lines.jsonl?.txt'");
        put(all, "a name with an escape sequence", named("\u001b[2Jx"), "'?[2Jx'");
        put(all, "a name of 60,000 letters", named("a".repeat(60_000)), "…'");
        put(
                all,
                "a document with a name in capitals",
                named("documents/" + "A".repeat(64)),
                "a name that no packet has");
        put(all, "a folder in the documents", named("documents/" + HASH + "/x"), "a name that no packet has");
        put(
                all,
                "a name twice",
                zip().add("lines.jsonl", X).add("lines.jsonl", X).bytes(),
                "'lines.jsonl': found the name twice");
        put(
                all,
                "another name before the data",
                with(zip -> zip.otherName = "report.html"),
                "'lines.jsonl': found another name");
    }

    private static void containers(Map<String, Map.Entry<byte[], String>> all) {
        put(all, "an encrypted entry", with(zip -> zip.flags = 1), "'lines.jsonl': found an encrypted entry");
        put(all, "a strongly encrypted entry", with(zip -> zip.flags = 0x41), "an encrypted entry");
        put(all, "a symbolic link", with(zip -> zip.attributes = 0xA1FF << 16), "'lines.jsonl': found a symbolic link");
        put(all, "a device", with(zip -> zip.attributes = 0x21FF << 16), "neither a file nor a folder");
        put(all, "another packing", zip().add("lines.jsonl", 12, X, 1, X).bytes(), "packing method 12");
        put(all, "a bomb", zip().deflated("lines.jsonl", new byte[40_000_000]).bytes(), "(a bomb?)");
        put(
                all,
                "more bytes than declared",
                with(zip -> zip.moreDeclared = -10),
                "'lines.jsonl': found more bytes than it declares");
        put(
                all,
                "fewer bytes than declared",
                with(zip -> zip.moreDeclared = 10),
                "'lines.jsonl': found fewer bytes than it declares");
        put(all, "a gigantic file declared", with(zip -> zip.moreDeclared = -100), "bytes declared");
        put(all, "a stored size that lies", zip().add("lines.jsonl", 0, X, 5, X).bytes(), "1 bytes stored for 5");
        put(
                all,
                "another checksum",
                zip().add("lines.jsonl", 0, X, 1, new byte[] {'y'}).bytes(),
                "another checksum");
        put(
                all,
                "rubbish for packed bytes",
                zip().add("lines.jsonl", 8, new byte[] {7, 7, 7}, 9, X).bytes(),
                "cannot be unpacked");
        put(all, "bytes behind the packed ones", behind(), "bytes behind its end");
        put(
                all,
                "fewer entries counted",
                zip().add("README.txt", X).add("key.txt", X).bytes(1, 0),
                "more records than it counts");
        put(all, "more entries counted", zip().add("README.txt", X).bytes(2, 0), "no record of a zip's directory");
        put(all, "60,000 entries counted", zip().add("README.txt", X).bytes(60_000, 0), "at most 10000 entries");
        put(
                all,
                "bytes hidden before the directory",
                zip().add("README.txt", X).bytes(1, 40),
                "bytes between the files and it");
        put(all, "an empty zip", zip().bytes(), "README.txt: found no such file");
    }

    private static byte[] behind() {
        byte[] stored = {1, 1, 0, (byte) 0xFE, (byte) 0xFF, 'x', 9, 9};
        return zip().add("lines.jsonl", 8, stored, 1, X).bytes();
    }

    private static void put(Map<String, Map.Entry<byte[], String>> all, String what, byte[] bytes, String said) {
        all.put(what, Map.entry(bytes, said));
    }

    @TestFactory
    Stream<DynamicTest> isRefusedWithThePlaceNamed() throws IOException {
        return packets().entrySet().stream()
                .map(each -> DynamicTest.dynamicTest(
                        each.getKey(),
                        () -> refuses(each.getValue().getKey(), each.getValue().getValue())));
    }

    private void refuses(byte[] bytes, String said) throws IOException {
        Path file = folder.resolve("hostile.zip");
        Files.write(file, bytes);
        Set<String> before = everything(outer());
        SampleFarm.Answer answer = SampleFarm.run(folder, "inspect", "hostile.zip");
        // An empty zip reads, and lacks everything.
        boolean reads = said.contains("no such file");
        assertThat(answer.exit()).isEqualTo(reads ? Exit.FOUND_WANTING : Exit.REFUSED);
        assertThat(answer.err()).isEmpty();
        assertThat(answer.out().replaceAll("\\s+", " "))
                .contains(reads ? "DOES NOT AGREE" : "COULD NOT BE LOOKED THROUGH", said)
                .doesNotContain("Exception");
        assertThat(everything(outer())).isEqualTo(before);
    }

    /** Two folders up, as far as any of the names here climbs. */
    private Path outer() {
        return folder.resolve("../..").normalize();
    }

    private static Set<String> everything(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(Path::toString).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    @TestFactory
    Stream<DynamicTest> linesThatNoWriterWrites() {
        Map<String, Map.Entry<Consumer<Repacked>, String>> all = new LinkedHashMap<>();
        all.put(
                "a line of 9 MiB",
                change(lines -> lines.set(5, "{\"a\":\"" + noise() + "\"}"), "entry 6, lines.jsonl, line 6: found 9"));
        all.put(
                "deep brackets",
                change(lines -> lines.set(5, "[".repeat(90_000) + "]".repeat(90_000)), "entry 6, lines.jsonl, line 6"));
        all.put("an empty line", change(lines -> lines.set(5, ""), "entry 6, lines.jsonl, line 6"));
        all.put(
                "a name used twice",
                change(lines -> lines.set(5, "{\"act\":1,\"act\":2}"), "entry 6, lines.jsonl, line 6"));
        all.put(
                "an unknown kind",
                change(
                        lines -> lines.set(5, lines.get(5).replace("seed.received", "java.lang.Runtime")),
                        "The entry kind 'java.lang.Runtime' is not known"));
        all.put(
                "an unknown field",
                change(lines -> lines.set(5, lines.get(5).replace("\"crop\":", "\"cropX\":")), "entry 6"));
        all.put(
                "another number",
                change(
                        lines -> lines.set(5, lines.get(5).replace("\"number\":6", "\"number\":9007199254740991")),
                        "entries 6 to 9007199254740990"));
        all.put(
                "a day that is none",
                change(lines -> lines.set(5, lines.get(5).replace("2025-02-24\"", "2025-02-31\"")), "entry 6"));
        all.put("no lines at all", change(java.util.List::clear, "lines.jsonl"));
        return all.entrySet().stream()
                .map(each -> DynamicTest.dynamicTest(each.getKey(), () -> {
                    Repacked packet = Repacked.of(good);
                    each.getValue().getKey().accept(packet);
                    packet.write(folder.resolve("lines.zip"));
                    refusedWith(each.getValue().getValue());
                }));
    }

    private static Map.Entry<Consumer<Repacked>, String> change(Consumer<java.util.List<String>> lines, String said) {
        return Map.entry(packet -> packet.lines(lines), said);
    }

    /** Text that does not shrink beyond what a packet may. */
    private static String noise() {
        StringBuilder noise = new StringBuilder();
        java.util.random.RandomGenerator random =
                java.util.random.RandomGeneratorFactory.of("L64X128MixRandom").create(7);
        while (noise.length() < 9_500_000) {
            noise.append(Long.toString(random.nextLong(), 36));
        }
        return noise.toString();
    }

    private void refusedWith(String said) {
        SampleFarm.Answer answer = SampleFarm.run(folder, "inspect", "lines.zip");
        assertThat(answer.exit()).isEqualTo(Exit.FOUND_WANTING);
        assertThat(answer.err()).isEmpty();
        assertThat(answer.out().replaceAll("\\s+", " ")).contains("DOES NOT AGREE", said);
    }

    @Test
    void linesThatAreNotUtf8AreNamed() throws IOException {
        Repacked packet = Repacked.of(good);
        byte[] lines = packet.members().getOrDefault("lines.jsonl", new byte[0]);
        lines[30] = (byte) 0xFF;
        packet.write(folder.resolve("lines.zip"));
        refusedWith("entry 1, lines.jsonl, line 1");
    }

    @Test
    void aPacketThatSomebodyElsePackedAgainIsStillThePacket() throws Exception {
        Path again = folder.resolve("again.zip");
        try (java.util.zip.ZipOutputStream zip = new java.util.zip.ZipOutputStream(Files.newOutputStream(again))) {
            zip.putNextEntry(new java.util.zip.ZipEntry("documents/"));
            for (Map.Entry<String, byte[]> member : Repacked.of(good).members().entrySet()) {
                zip.putNextEntry(new java.util.zip.ZipEntry(member.getKey()));
                zip.write(member.getValue());
            }
        }
        assertThat(SampleFarm.run(folder, "inspect", "again.zip").exit()).isEqualTo(Exit.OK);
    }
}

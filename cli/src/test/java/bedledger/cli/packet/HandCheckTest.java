package bedledger.cli.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README.txt of a packet, followed to the letter with {@code unzip}, {@code sha256sum}, {@code openssl} and Python alone. */
class HandCheckTest {
    private static final List<String> TOOLS = List.of("bash", "unzip", "sha256sum", "openssl", "python3", "awk", "sed");

    @TempDir
    Path folder;

    @Test
    void leadsToTheEndOverAGoodPacket() throws Exception {
        String said = follow(farm().packet(), true);
        assertThat(said)
                .contains("25 lines of 25", "15 lines of 15", "Signature Verified Successfully")
                .doesNotContain("DOES NOT", "not here", "Failure", "rror");
        assertThat(said.split(" AGREES", -1)).hasSize(3);
    }

    @Test
    void findsAChangedAmount() throws Exception {
        Repacked packet = Repacked.of(farm().packet()).mend("lines.jsonl", "\"80 kg\"", "\"95 kg\"");
        assertThat(follow(packet.write(folder.resolve("changed.zip")), true))
                .contains("DOES NOT AGREE")
                .contains("15 lines of 15");
    }

    @Test
    void findsASignatureByAnotherKey() throws Exception {
        Repacked packet = Repacked.of(farm().packet());
        String other = SampleFarm.text("other.key").lines().toList().get(1);
        assertThat(follow(packet.with("key.txt", other + "\n").write(folder.resolve("changed.zip")), false))
                .contains("Signature Verification Failure");
    }

    @Test
    void findsAnExchangedDocumentAndAnAbsentOne() throws Exception {
        Path good = farm().packet();
        Repacked exchanged = Repacked.of(good);
        String document = exchanged.members().keySet().stream()
                .filter(name -> name.startsWith("documents/"))
                .findFirst()
                .orElseThrow();
        String hash = document.substring("documents/".length());
        assertThat(follow(exchanged.with(document, "another").write(folder.resolve("changed.zip")), false))
                .containsPattern("(?m)^[0-9a-f]{64}  " + hash + "$");
        Repacked absent = Repacked.of(good);
        absent.members().remove(document);
        assertThat(follow(absent.write(folder.resolve("changed.zip")), false)).contains("not here: " + hash);
    }

    private SampleFarm farm() {
        return new SampleFarm(folder, "sample.key").season(SampleFarm.season());
    }

    /** Unpacks, lays the kept checkpoint beside it where asked, and runs every command of the page in its order. */
    private String follow(Path packet, boolean withKept) throws IOException, InterruptedException {
        for (String tool : TOOLS) {
            assumeTrue(run(folder, "command -v " + tool).exit() == 0, tool + " is not on this machine");
        }
        Path unpacked = Files.createDirectories(folder.resolve("unpacked"));
        run(unpacked, "rm -rf ./* && unzip -q '" + packet + "'");
        if (withKept) {
            Files.copy(folder.resolve("kept.txt"), unpacked.resolve("kept-checkpoint.txt"));
        }
        String page = Files.readString(unpacked.resolve("README.txt"));
        String commands = page.substring(page.indexOf("\n1. THE SEAL"))
                .lines()
                .filter(line -> line.startsWith("    "))
                .map(line -> line.substring(4))
                .collect(Collectors.joining("\n", "", "\n"));
        assertThat(commands.lines().count()).isGreaterThan(20);
        return run(unpacked, commands).out();
    }

    private record Ran(int exit, String out) {}

    private static Ran run(Path in, String script) throws IOException, InterruptedException {
        Process shell;
        try {
            shell = new ProcessBuilder("bash", "-c", script)
                    .directory(in.toFile())
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException noShell) {
            return new Ran(127, "");
        }
        String out = new String(shell.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(shell.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Ran(shell.exitValue(), out);
    }
}

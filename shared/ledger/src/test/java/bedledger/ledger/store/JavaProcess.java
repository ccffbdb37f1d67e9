package bedledger.ledger.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Another Java process, started as the launcher starts the program, on the test class path; what it prints goes into files. */
final class JavaProcess implements AutoCloseable {
    private static final List<String> LAUNCHER_FLAGS =
            List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-XX:-UsePerfData");
    private final Process process;
    private final Path out;
    private final Path err;

    private JavaProcess(Process process, Path out, Path err) {
        this.process = process;
        this.out = out;
        this.err = err;
    }

    static List<String> command(Class<?> main, String... arguments) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(LAUNCHER_FLAGS);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(List.of(arguments));
        return command;
    }

    static JavaProcess start(Path scratch, List<String> command) throws IOException {
        return start(scratch, command, Map.of());
    }

    static JavaProcess start(Path scratch, List<String> command, Map<String, String> environment) throws IOException {
        Path out = Files.createTempFile(scratch, "out", ".txt");
        Path err = Files.createTempFile(scratch, "err", ".txt");
        ProcessBuilder builder = new ProcessBuilder(command);
        // The stack of a Java tool's own message on the error stream would be taken for a failure.
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        builder.environment().putAll(environment);
        builder.redirectOutput(out.toFile()).redirectError(err.toFile());
        return new JavaProcess(builder.start(), out, err);
    }

    /** Waits until it has said so many bytes, or is dead. */
    void awaitWords(long bytes) throws IOException, InterruptedException {
        while (process.isAlive() && Files.size(out) < bytes) {
            Thread.sleep(5);
        }
    }

    /** SIGKILL: the process gets no word in. Returns its exit code, 137 if it was that that ended it. */
    int kill() throws InterruptedException {
        process.destroyForcibly();
        return process.waitFor();
    }

    int await(long seconds) throws InterruptedException {
        if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
            kill();
        }
        return process.exitValue();
    }

    String out() throws IOException {
        return Files.readString(out);
    }

    String err() throws IOException {
        return Files.readString(err);
    }

    @Override
    public void close() throws IOException {
        process.destroyForcibly();
        Files.deleteIfExists(out);
        Files.deleteIfExists(err);
    }
}

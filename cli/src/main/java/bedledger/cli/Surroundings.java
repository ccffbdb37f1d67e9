package bedledger.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.random.RandomGenerator;

/**
 * What the program has around it: the one place where the clock, chance and the standard streams come in.
 *
 * @param folder the folder it was started in
 * @param environment environment variables
 * @param nanoTime a clock that only goes on, for how long something took, in nanoseconds from any beginning
 * @param terminal whether a person reads what is printed
 */
public record Surroundings(
        Path folder,
        Map<String, String> environment,
        Clock clock,
        LongSupplier nanoTime,
        RandomGenerator random,
        InputStream in,
        PrintStream out,
        PrintStream err,
        boolean terminal) {
    /** The same where nobody asks how long something took closer than the clock tells. */
    public Surroundings(
            Path folder,
            Map<String, String> environment,
            Clock clock,
            RandomGenerator random,
            InputStream in,
            PrintStream out,
            PrintStream err,
            boolean terminal) {
        this(
                folder,
                environment,
                clock,
                () -> TimeUnit.MILLISECONDS.toNanos(clock.millis()),
                random,
                in,
                out,
                err,
                terminal);
    }

    /** Where this person's settings live, by the XDG base directory specification. */
    public Path configuration() {
        String given = environment.getOrDefault("XDG_CONFIG_HOME", "");
        return (given.isEmpty() ? home().resolve(".config") : Path.of(given)).resolve("bedledger");
    }

    private Path home() {
        return Path.of(environment.getOrDefault("HOME", System.getProperty("user.home", ".")));
    }
}

package bedledger.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.random.RandomGenerator;

/**
 * What the program has around it: the one place where the clock, chance and the standard streams come in.
 *
 * @param folder the folder it was started in
 * @param environment environment variables
 * @param terminal whether a person reads what is printed
 */
public record Surroundings(
        Path folder,
        Map<String, String> environment,
        Clock clock,
        RandomGenerator random,
        InputStream in,
        PrintStream out,
        PrintStream err,
        boolean terminal) {
    /** Where this person's settings live, by the XDG base directory specification. */
    public Path configuration() {
        String given = environment.getOrDefault("XDG_CONFIG_HOME", "");
        return (given.isEmpty() ? home().resolve(".config") : Path.of(given)).resolve("bedledger");
    }

    private Path home() {
        return Path.of(environment.getOrDefault("HOME", System.getProperty("user.home", ".")));
    }
}

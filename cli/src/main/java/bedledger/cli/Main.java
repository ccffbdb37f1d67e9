package bedledger.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;

/** Starts the program. */
public final class Main {
    public static void main(String[] args) {
        // Nothing leaves the farm: Axon's update checker stays off whatever gets on the class path.
        System.setProperty("axoniq.update-checker.disabled", "true");
        PrintStream out = stream(FileDescriptor.out);
        PrintStream err = stream(FileDescriptor.err);
        Surroundings surroundings = new Surroundings(
                Path.of("").toAbsolutePath(),
                System.getenv(),
                Clock.systemUTC(),
                System::nanoTime,
                new SecureRandom(),
                System.in,
                out,
                err,
                Boolean.getBoolean("bedledger.terminal"));
        int code = new Bedledger(surroundings).run(args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    private static PrintStream stream(FileDescriptor where) {
        return new PrintStream(new PlainOutput(new FileOutputStream(where)), true, StandardCharsets.UTF_8);
    }

    private Main() {}
}

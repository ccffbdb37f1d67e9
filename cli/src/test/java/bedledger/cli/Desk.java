package bedledger.cli;

import bedledger.cli.write.SaidWords;
import bedledger.language.Entry;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.BookReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Stream;

/** A grower's desk: a folder, a settings folder of its own, a clock that is set by hand, and the program. */
final class Desk {
    private static final Instant NEW_YEAR = Instant.parse("2026-01-02T15:00:00Z");
    private final Path folder;
    private Map<String, String> environment = new HashMap<>();
    private final RandomGenerator random =
            RandomGeneratorFactory.of("L64X128MixRandom").create(2025);
    /** Whatever is timed takes 40 ms. */
    private long nanoseconds;

    final SteppingClock clock = new SteppingClock(NEW_YEAR);

    Desk(Path folder) {
        this.folder = folder;
        environment.put("XDG_CONFIG_HOME", folder.resolve("settings").toString());
    }

    /** A desk with a practice book in the folder {@code farm}, in which two fields and six beds are entered. */
    static Desk withPracticeBook(Path folder) {
        Desk desk = new Desk(folder);
        desk.run("new farm --farm \"Ash Corner\" --practice --time-zone America/New_York --written 2025-01-05T18:00")
                .done();
        desk.typed("""
                        register-field North --gross 0.05ha --on 2025-01-05 --written 2025-01-05
                        lay-out N1..N4 --field North --length 20m --width 0.75m --on 2025-01-05
                        register-field South --gross 0.02ha --on 2025-01-05
                        lay-out S1 S2 --field South --length 10m --width 0.75m --on 2025-01-05
                        found North South --nothing --on 2025-01-05
                        """, "did - --book farm").done();
        return desk;
    }

    Desk variable(String name, String value) {
        environment.put(name, value);
        return this;
    }

    /** The same desk, its variables seen through something. */
    Desk answering(UnaryOperator<Map<String, String>> through) {
        environment = through.apply(environment);
        return this;
    }

    /** Runs a command as typed after {@code bedledger}. */
    Said run(String line) {
        return run(SaidWords.of(line).toArray(String[]::new));
    }

    Said run(String... words) {
        return typed("", words);
    }

    /** Runs a command with these lines on its standard input. */
    Said typed(String input, String line) {
        return typed(input, SaidWords.of(line).toArray(String[]::new));
    }

    private Said typed(String input, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings around = new Surroundings(
                folder,
                environment,
                clock,
                () -> nanoseconds += TimeUnit.MILLISECONDS.toNanos(40),
                random,
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        int exit = new Bedledger(around).run(words);
        return new Said(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    Path folder() {
        return folder;
    }

    Path file(String name) {
        return folder.resolve(name);
    }

    /** Writes a file beside the book. */
    Desk lay(String name, String text) {
        return lay(name, text.getBytes(StandardCharsets.UTF_8));
    }

    Desk lay(String name, byte[] bytes) {
        try {
            Files.createDirectories(Objects.requireNonNull(file(name).getParent()));
            Files.write(file(name), bytes);
            return this;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Puts one text in place of another in a file beside the book, as in an editor. */
    Desk mend(String name, String wrong, String right) {
        try {
            String text = Files.readString(file(name));
            // The reasons stand in the last columns and are left as they are.
            return lay(name, text.replaceFirst(wrong, right));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Copies a book, file by file. */
    void copy(String book, String to) {
        try (Stream<Path> all = Files.walk(file(book))) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path copy = file(to).resolve(file(book).relativize(file).toString());
                Files.createDirectories(Objects.requireNonNull(copy.getParent()));
                Files.copy(file, copy);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    List<Entry> entries(String book) {
        return BookReader.of(new BookFolder(file(book))).entries();
    }

    /** What of a book must not change where something is refused. */
    Sealed sealed(String book) {
        return Sealed.of(file(book));
    }
}

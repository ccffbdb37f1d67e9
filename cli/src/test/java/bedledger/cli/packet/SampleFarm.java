package bedledger.cli.packet;

import bedledger.cli.Bedledger;
import bedledger.cli.Surroundings;
import bedledger.cli.write.SaidWords;
import bedledger.domain.ActIds;
import bedledger.domain.Book;
import bedledger.language.BookKeeping;
import bedledger.language.PersonId;
import bedledger.ledger.note.KeyFile;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.store.BookFolder;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * A book of an invented farm that comes out the same to the byte each time: a standing clock, seeded ids, and keys that everybody knows
 * (RFC 8032 §7.1, tests 1 and 2).
 */
final class SampleFarm {
    static final String KEY = "hollow-lane-farm/sample";
    private static final Instant NOW = Instant.parse("2026-01-02T15:00:00Z");
    private static final Instant OPENED = Instant.parse("2025-02-10T23:00:00Z");
    private static final String RECEIPT =
            "Long Meadow Seed, receipt 501\n60 g carrot, lot 4471, organic\n10 g lettuce, organic\n";

    /** What a command answered. */
    record Answer(int exit, String out, String err) {}

    private final Path folder;
    private final RandomGenerator random =
            RandomGeneratorFactory.of("L64X128MixRandom").create(2025);

    /** A desk in this folder, with the book {@code farm} opened on it under one of the known keys. */
    SampleFarm(Path folder, String keyResource) {
        this.folder = folder;
        SigningKey key = keep(keyResource);
        BookKeeping.BookOpened opened =
                new BookKeeping.BookOpened("Hollow Lane Farm", true, "America/New_York", "us", "metric");
        Book.create(
                        new BookFolder(folder.resolve("farm")),
                        key,
                        opened,
                        new PersonId("owner"),
                        Clock.fixed(NOW, ZoneOffset.UTC),
                        new ActIds(random),
                        OPENED)
                .close();
        write("seed-receipt-501.txt", RECEIPT);
    }

    private SigningKey keep(String resource) {
        try {
            Path keys = Files.createDirectories(folder.resolve("settings/bedledger/keys"));
            Path file = keys.resolve(KEY.replace('/', '_') + ".key");
            Files.writeString(file, text(resource));
            file.toFile().setReadable(false, false);
            file.toFile().setReadable(true, true);
            return KeyFile.load(file).key();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Runs the season, one command a line; where it says {@code checkpoint}, that one is kept in {@code kept.txt}. */
    SampleFarm season(List<String> lines) {
        for (String line : lines) {
            boolean keeps = line.equals("checkpoint");
            Answer answer = run(keeps ? "checkpoint --out kept.txt" : line, "--book", "farm");
            if (answer.exit() != 0) {
                throw new IllegalStateException(line + ": " + answer);
            }
        }
        return this;
    }

    /** The season's lines as committed. */
    static List<String> season() {
        return text("season.txt")
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
    }

    /** Makes a packet and hands back where it is. */
    Path packet(String... options) {
        Path file = folder.resolve("packet.zip");
        try {
            Files.deleteIfExists(file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        String[] more = Arrays.copyOf(options, options.length + 4);
        more[options.length] = "--book";
        more[options.length + 1] = "farm";
        more[options.length + 2] = "--out";
        more[options.length + 3] = "packet.zip";
        Answer answer = run("packet", more);
        if (answer.exit() != 0) {
            throw new IllegalStateException(answer.toString());
        }
        return file;
    }

    Answer run(String line, String... more) {
        List<String> words = new java.util.ArrayList<>(SaidWords.of(line));
        words.addAll(List.of(more));
        return run(folder, random, words.toArray(String[]::new));
    }

    /** Runs the program in a folder in which there need be no book. */
    static Answer run(Path folder, String... words) {
        return run(folder, RandomGeneratorFactory.of("L64X128MixRandom").create(1), words);
    }

    private static Answer run(Path folder, RandomGenerator random, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings around = new Surroundings(
                folder,
                Map.of("XDG_CONFIG_HOME", folder.resolve("settings").toString()),
                Clock.fixed(NOW, ZoneOffset.UTC),
                random,
                new ByteArrayInputStream(new byte[0]),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        int exit = new Bedledger(around).run(words);
        return new Answer(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    Path file(String name) {
        return folder.resolve(name);
    }

    String verifierKey() {
        return new BookFolder(folder.resolve("farm")).verifierKey().toString();
    }

    private void write(String name, String text) {
        try {
            Files.writeString(folder.resolve(name), text);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static String text(String resource) {
        try (InputStream in = Objects.requireNonNull(SampleFarm.class.getResourceAsStream(resource), resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}

package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.cli.Bedledger;
import bedledger.cli.Surroundings;
import bedledger.cli.read.ReadBook;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Farm;
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
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGeneratorFactory;

/** A folder with books in it, a standing clock, and the program; and the demo's book, made once for all tests. */
record Desktop(Path folder) {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-01-02T15:00:00Z"), ZoneOffset.UTC);

    /** A folder among what is built, for books that many tests share. */
    static Path built(String name) throws IOException {
        return Files.createTempDirectory(
                Files.createDirectories(Path.of("target", "books").toAbsolutePath()), name);
    }

    private static final class Demo {
        static final Desktop DESK = made();

        private static Desktop made() {
            try {
                Desktop desk = new Desktop(built("report"));
                desk.run("demo", "farm");
                return desk;
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
    }

    /** The demo's book is the folder {@code farm}. */
    static Desktop withTheDemo() {
        return Demo.DESK;
    }

    /** Carries a command out and hands back what it printed. */
    String run(String... words) {
        return typed("", words);
    }

    String typed(String input, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings around = new Surroundings(
                folder,
                Map.of("XDG_CONFIG_HOME", folder.resolve("settings").toString()),
                CLOCK,
                RandomGeneratorFactory.of("L64X128MixRandom").create(2025),
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        int exit = new Bedledger(around).run(words);
        assertThat(exit).as("exit code; it said: %s %s", out, err).isZero();
        return out.toString(StandardCharsets.UTF_8);
    }

    /** The agronomist's report of a book, before it is written. */
    SeasonsReport seasons(String book, String day) {
        BookFolder place = new BookFolder(folder.resolve(book));
        List<Entry> entries = BookReader.of(place).entries();
        BookKeeping.BookOpened opened = (BookKeeping.BookOpened) entries.get(0).fact();
        LocalDate on = LocalDate.parse(day);
        ReadBook read = new ReadBook(place, opened, Farm.of(entries), null, on);
        return SeasonsReport.of(SeasonsAsked.of(read, on), Seal.of(place), CLOCK.instant());
    }

    /** Writes a report of a book and reads it; without its paper, which takes longer. */
    Page report(String book, String... options) {
        List<String> words = new ArrayList<>(List.of("report", "--html-only", "--book", book));
        words.addAll(List.of(options));
        return Page.read(Path.of(run(words.toArray(String[]::new)).strip()));
    }

    /** Writes a report of a book on paper. */
    Path paper(String book, String... options) {
        List<String> words = new ArrayList<>(List.of("report", "--book", book));
        words.addAll(List.of(options));
        return Path.of(run(words.toArray(String[]::new)).lines().findFirst().orElseThrow());
    }
}

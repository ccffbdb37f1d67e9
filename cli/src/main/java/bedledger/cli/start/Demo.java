package bedledger.cli.start;

import bedledger.cli.Bedledger;
import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code bedledger demo}: an invented season in a practice book, and what can be asked of it. */
@Command(
        name = "bedledger demo",
        sortOptions = false,
        description = "Make a practice book, write an invented season into it, and show what it tells.",
        footer = {"", "Example: bedledger demo try-me"})
public final class Demo implements Callable<Integer> {
    private static final String SEASON = "season.txt";
    private static final String END = "2025-12-31";
    private final Surroundings around;

    @Parameters(arity = "0..1", paramLabel = "FOLDER", description = "where to make it (bedledger-demo if left out)")
    @Nullable
    Path folder;

    public Demo(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Path book = free(around.folder().resolve(folder == null ? Path.of("bedledger-demo") : folder));
        List<String> season = season();
        quietly(
                "new",
                book.toString(),
                "--farm",
                "Hollow Lane Farm",
                "--practice",
                "--units",
                "us",
                "--time-zone",
                "America/New_York",
                "--written",
                "2025-02-10T18:00");
        around.out().println("A practice book of an invented farm is being written in " + book + " …");
        write(season, book);
        show("bed", "K1", "--on", END, "--book", book.toString());
        show("returned", "--by", "bed", "--on", END, "--book", book.toString());
        show("check", "--on", END, "--book", book.toString());
        show("verify", "--book", book.toString());
        show("report", "--on", END, "--html-only", "--book", book.toString());
        around.out().println("\nLook further: bedledger beds --on 2025-07-20 --book " + book);
        around.out().println("Everything it can do: bedledger --help");
        return Exit.OK;
    }

    /** The folder, or the first of that name with a number that is not taken: a demo never writes into a book that is there. */
    private static Path free(Path wanted) {
        Path free = wanted;
        for (int more = 2; Files.exists(free); more++) {
            free = wanted.resolveSibling(wanted.getFileName() + "-" + more);
        }
        return free;
    }

    static List<String> season() {
        try (InputStream in = Demo.class.getResourceAsStream(SEASON)) {
            if (in == null) {
                throw new IllegalStateException("no resource " + SEASON);
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(SEASON, failed);
        }
    }

    /** Writes the season: runs of {@code did} lines through one opening of the book, what else there is by its own command. */
    private void write(List<String> season, Path book) {
        StringBuilder run = new StringBuilder();
        for (String line : season) {
            if (line.startsWith("did ")) {
                run.append(line.substring("did ".length())).append('\n');
                continue;
            }
            did(run.toString(), book);
            run.setLength(0);
            quietly(words(line, book));
        }
        did(run.toString(), book);
    }

    private static String[] words(String line, Path book) {
        List<String> words = new java.util.ArrayList<>(bedledger.cli.write.SaidWords.of(line));
        words.addAll(List.of("--book", book.toString()));
        return words.toArray(String[]::new);
    }

    private void did(String lines, Path book) {
        if (!lines.isEmpty()) {
            InputStream in = new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8));
            run(in, "did", "-", "--book", book.toString());
        }
    }

    private void quietly(String... command) {
        run(around.in(), command);
    }

    private void run(InputStream in, String... command) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        java.io.ByteArrayOutputStream said = new java.io.ByteArrayOutputStream();
        PrintStream err = new PrintStream(said, false, StandardCharsets.UTF_8);
        Surroundings quiet = new Surroundings(
                around.folder(),
                around.environment(),
                around.clock(),
                around.nanoTime(),
                around.random(),
                in,
                nowhere,
                err,
                false);
        int code = new Bedledger(quiet).run(command);
        if (code != Exit.OK) {
            throw new Failure(code, "The demo could not be written:\n" + said.toString(StandardCharsets.UTF_8));
        }
    }

    private void show(String... command) {
        around.out().println("\n$ bedledger " + String.join(" ", command) + "\n");
        new Bedledger(around).run(command);
    }
}

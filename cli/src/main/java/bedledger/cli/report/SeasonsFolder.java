package bedledger.cli.report;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.paper.Paper;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReadOptions;
import bedledger.cli.read.WeatherFolder;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes the agronomist's report into a folder of its own: the page, the same on paper, and the figures as CSV. */
final class SeasonsFolder {
    private final Surroundings around;
    private final ReadOptions options;
    private final ReadBook book;
    private final LocalDate day;
    private final @Nullable Path out;

    SeasonsFolder(Surroundings around, ReadOptions options, ReadBook book, LocalDate day, @Nullable Path out) {
        this.around = around;
        this.options = options;
        this.book = book;
        this.day = day;
        this.out = out;
    }

    /** What {@code --json} prints. */
    record View(
            boolean practice,
            String farm,
            String on,
            @Nullable String asKnownOn,
            String folder,
            List<String> files,
            long beds,
            List<String> seasons) {}

    int call() {
        WeatherFolder.of(book).unreadable().forEach(word -> around.err().println("Careful: " + word));
        SeasonsAsked asked = SeasonsAsked.of(book, day);
        SeasonsReport report =
                SeasonsReport.of(asked, Seal.of(book.folder()), around.clock().instant());
        Path wanted = out == null
                ? book.folder().root().resolve("reports").resolve("seasons-" + day)
                : around.folder().resolve(out);
        try {
            Path folder = firstFree(wanted);
            List<String> files = write(report, folder);
            View view = view(asked, folder, files);
            return new Output(around, options)
                    .print(
                            view,
                            table(view),
                            text -> files.forEach(name -> text.out().println(folder.resolve(name))));
        } catch (IOException | UncheckedIOException failed) {
            throw new Failure(
                    Exit.CANNOT_CREATE,
                    "The report could not be written to '" + wanted + "': " + failed.getMessage()
                            + ". Choose another place with --out FOLDER, or make room on the disk.");
        }
    }

    /** What was written before stays: a folder that is there is left alone. */
    private static Path firstFree(Path wanted) throws IOException {
        Path parent = wanted.toAbsolutePath().getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
        Path folder = wanted;
        for (int more = 2; ; more++) {
            try {
                return Files.createDirectory(folder);
            } catch (FileAlreadyExistsException taken) {
                folder = wanted.resolveSibling(wanted.getFileName() + "-" + more);
            }
        }
    }

    private static List<String> write(SeasonsReport report, Path folder) throws IOException {
        List<String> names = new ArrayList<>(List.of("seasons.html", "seasons.pdf"));
        try (Writer page = Files.newBufferedWriter(folder.resolve("seasons.html"), StandardCharsets.UTF_8)) {
            report.write(page);
        }
        try (OutputStream paper = new BufferedOutputStream(Files.newOutputStream(folder.resolve("seasons.pdf")))) {
            report.writePaper(Paper.Kept.PDF_A_3A, paper);
        }
        for (Chapter.DataFile file : report.files()) {
            Files.writeString(folder.resolve(file.name()), Output.csv(file.table()), StandardCharsets.UTF_8);
            names.add(file.name());
        }
        return names;
    }

    private View view(SeasonsAsked asked, Path folder, List<String> files) {
        return new View(
                book.opened().practice(),
                book.opened().farm(),
                day.toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                folder.toString(),
                files,
                asked.beds().size(),
                asked.seasons().stream().map(season -> season.name()).toList());
    }

    private static Output.Table table(View view) {
        return new Output.Table(
                List.of("file"),
                view.files().stream()
                        .map(name ->
                                List.of(Path.of(view.folder()).resolve(name).toString()))
                        .toList());
    }
}

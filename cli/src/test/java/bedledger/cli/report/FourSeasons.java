package bedledger.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** A practice book of four invented seasons on eight beds, and the agronomist's report of it, made once for all tests. */
final class FourSeasons {
    private static final class Made {
        static final Path FOLDER = made();

        private static Path made() {
            try {
                Desktop desk = new Desktop(Desktop.built("seasons"));
                desk.run(
                        "new",
                        "heron",
                        "--farm",
                        "Heron Bottom Farm",
                        "--practice",
                        "--units",
                        "metric",
                        "--time-zone",
                        "Europe/Dublin",
                        "--written",
                        "2023-02-20");
                try (var lines = Objects.requireNonNull(
                        FourSeasons.class.getResourceAsStream("heron-bottom.txt"), "heron-bottom.txt")) {
                    desk.typed(
                            new String(lines.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8),
                            "did",
                            "-",
                            "--written",
                            "2026-11-25",
                            "--book",
                            "heron");
                }
                try (var normals = Objects.requireNonNull(
                        FourSeasons.class.getResourceAsStream("heron-bottom-normals.csv"), "normals")) {
                    Files.copy(normals, desk.folder().resolve("normals.csv"));
                }
                desk.run("weather", "--add", "normals.csv", "--book", "heron");
                write(desk, "heron", "report");
                return desk.folder();
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
    }

    static Path write(Desktop desk, String book, String out) {
        desk.run("report", "--for", "agronomist", "--book", book, "--on", "2026-11-25", "--out", out);
        return desk.folder().resolve(out);
    }

    static Desktop desk() {
        return new Desktop(Made.FOLDER);
    }

    static Page page() {
        return Page.read(Made.FOLDER.resolve("report").resolve("seasons.html"));
    }

    static Path paper() {
        return Made.FOLDER.resolve("report").resolve("seasons.pdf");
    }

    static Path file(String name) {
        return Made.FOLDER.resolve("report").resolve(name);
    }

    private FourSeasons() {}
}

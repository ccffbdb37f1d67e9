package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.language.Problem;
import bedledger.language.Refused;
import bedledger.projections.weather.DailyFile;
import bedledger.projections.weather.Normals;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/** Puts a weather file into the book's folder, whole or not at all. */
final class WeatherAdding {
    private final Surroundings around;
    private final ReadBook book;

    WeatherAdding(Surroundings around, ReadBook book) {
        this.around = around;
        this.book = book;
    }

    void add(Path file, boolean replace) {
        if (!Files.isRegularFile(file)) {
            throw new Failure(Exit.NO_INPUT, "There is no file '" + file + "'. Check the path.");
        }
        String name = WeatherFolder.name(file);
        if (!name.matches("[a-z0-9][a-z0-9._-]*\\.(csv|dly)")) {
            throw new Refused(List.of(new Problem(
                    "weather file",
                    name,
                    "its name must end in .csv or .dly and hold only letters, digits, dots, - and _",
                    "rename it; a GHCN-Daily station file ends in .dly")));
        }
        WeatherFolder.Read read = WeatherFolder.read(file, name);
        String kept = read.normals().isPresent() ? WeatherFolder.NORMALS : name;
        if (read.daily().isPresent() && name.equals(WeatherFolder.NORMALS)) {
            throw new Refused(List.of(new Problem(
                    "weather file", name, "this name is kept for monthly normals", "rename the file, it holds days")));
        }
        Path target = book.folder().root().resolve(WeatherFolder.NAME).resolve(kept);
        if (Files.exists(target) && !replace) {
            throw new Refused(List.of(new Problem(
                    "weather file",
                    kept,
                    "the book has a file of that name",
                    "give --replace to put this one in its place, or rename it")));
        }
        put(file, target);
        String what = read.daily().map(DailyFile::words).orElse("")
                + read.normals().map(Normals::words).orElse("");
        TextTable.wrapped("Added weather/" + kept + ": " + what, 80).forEach(around.out()::println);
    }

    private static void put(Path file, Path target) {
        Path folder = target.resolveSibling("");
        Path beside = target.resolveSibling("." + target.getFileName() + ".new");
        try {
            Files.createDirectories(folder);
            Files.copy(file, beside, StandardCopyOption.REPLACE_EXISTING);
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException failed) {
            throw new Failure(
                    Exit.IO, "'" + target + "' could not be written: " + failed.getMessage() + ". Nothing was added.");
        }
    }
}

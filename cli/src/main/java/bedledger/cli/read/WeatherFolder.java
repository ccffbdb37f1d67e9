package bedledger.cli.read;

import bedledger.cli.Bedledger;
import bedledger.language.Refused;
import bedledger.projections.weather.CsvWeather;
import bedledger.projections.weather.DailyFile;
import bedledger.projections.weather.FarmWeather;
import bedledger.projections.weather.GhcnDaily;
import bedledger.projections.weather.Normals;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folder {@code weather} in a book's folder: daily files ({@code *.csv}, {@code *.dly}) and {@code normals.csv}.
 *
 * <p>It is outside the log: nothing in it is sealed, and it may be changed at will.
 *
 * @param files those that could be read
 * @param unreadable a sentence for each that could not, and was left out
 */
public record WeatherFolder(Path folder, List<DailyFile> files, Optional<Normals> normals, List<String> unreadable) {
    static final String NAME = "weather";
    static final String NORMALS = "normals.csv";

    /** A file of either kind, as it was read. */
    record Read(Optional<DailyFile> daily, Optional<Normals> normals) {}

    public static WeatherFolder of(ReadBook book) {
        Path folder = book.folder().root().resolve(NAME);
        List<DailyFile> files = new ArrayList<>();
        List<String> unreadable = new ArrayList<>();
        Optional<Normals> normals = Optional.empty();
        for (Path file : list(folder)) {
            try {
                Read read = read(file, name(file));
                read.daily().ifPresent(files::add);
                normals = normals.or(read::normals);
            } catch (Refused wrong) {
                unreadable.add("weather/" + name(file) + " is left out: "
                        + wrong.problems().get(0).toString().replaceAll("\\s+", " "));
            }
        }
        return new WeatherFolder(folder, files, normals, unreadable);
    }

    private static List<Path> list(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> isDaily(name(file)) || name(file).endsWith(".csv"))
                    .sorted()
                    .toList();
        } catch (IOException failed) {
            throw Bedledger.unreadable(folder, failed);
        }
    }

    static String name(Path file) {
        return file.getFileName() == null ? "" : file.getFileName().toString().toLowerCase(Locale.ROOT);
    }

    private static boolean isDaily(String name) {
        return name.endsWith(".dly");
    }

    /** Reads a file by its name, normals by their first column; throws {@link Refused} with every line that is wrong. */
    static Read read(Path file, String name) {
        try (BufferedReader text = open(file)) {
            if (isDaily(name)) {
                return new Read(Optional.of(GhcnDaily.read(name, text)), Optional.empty());
            }
            return isNormals(file)
                    ? new Read(Optional.empty(), Optional.of(Normals.read(name, text)))
                    : new Read(Optional.of(CsvWeather.read(name, text)), Optional.empty());
        } catch (IOException failed) {
            throw Bedledger.unreadable(file, failed);
        }
    }

    static boolean isNormals(Path file) throws IOException {
        try (BufferedReader text = open(file)) {
            String header = text.readLine();
            return header != null
                    && Stream.of(header.split(",", -1)).map(String::strip).anyMatch("month"::equalsIgnoreCase);
        }
    }

    /** Bytes that are not UTF-8 become signs that no column takes, and are refused by their line. */
    private static BufferedReader open(Path file) throws IOException {
        return new BufferedReader(new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8));
    }

    public FarmWeather weather(ReadBook book) {
        return FarmWeather.of(book.farm(), files, normals, book.today());
    }

    boolean isEmpty(FarmWeather weather) {
        return files.isEmpty() && normals.isEmpty() && weather.noted() == 0;
    }
}

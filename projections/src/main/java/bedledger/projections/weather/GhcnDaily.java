package bedledger.projections.weather;

import bedledger.language.Refused;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Reads the daily file of one station of the Global Historical Climatology Network ({@code .dly}, fixed columns).
 *
 * <p>Station 1-11, year 12-15, month 16-17, element 18-21, then 31 times value (5), measurement flag, quality flag, source
 * flag. Used are TMIN and TMAX (tenths of °C) and PRCP (tenths of mm); -9999 is missing, and a value whose quality flag is
 * not blank is dropped and counted (NOAA NCEI, GHCN-Daily readme).
 */
public final class GhcnDaily {
    private static final int MISSING = -9999;
    private static final int FIRST_VALUE = 21;
    private static final int VALUE_WIDTH = 8;
    private static final int WIDTH = FIRST_VALUE + 31 * VALUE_WIDTH;
    private static final Map<String, Integer> PLACES = Map.of("TMIN", 0, "TMAX", 1, "PRCP", 2);
    private final FileProblems problems;
    private final SortedMap<Long, double[]> days = new TreeMap<>();
    private String station = "";
    private int dropped;

    private GhcnDaily(FileProblems problems) {
        this.problems = problems;
    }

    /**
     * Reads a whole file; the reader is closed.
     *
     * @throws Refused for a line that is not in these columns, or a second station
     */
    public static DailyFile read(String name, Reader text) {
        GhcnDaily reading = new GhcnDaily(new FileProblems(name));
        try (BufferedReader lines = new BufferedReader(text)) {
            int number = 0;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                number++;
                reading.take(number, line);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        reading.dropContradictions();
        if (reading.days.isEmpty()) {
            reading.problems.add(
                    1, "", "there is no TMIN, TMAX or PRCP in it", "take the station's .dly file as it is");
        }
        reading.problems.refuse();
        return new DailyFile(name, Origin.GHCN_DAILY, Optional.of(reading.station), reading.days, reading.dropped);
    }

    private void take(int number, String line) {
        if (line.isBlank()) {
            return;
        }
        if (line.length() < FIRST_VALUE + 5 || line.length() > WIDTH) {
            problems.add(number, shown(line), "a line has 269 columns", "take the station's .dly file as it is");
            return;
        }
        String padded = line + " ".repeat(WIDTH - line.length());
        String here = padded.substring(0, 11);
        if (!station.isEmpty() && !station.equals(here)) {
            problems.add(number, here, "the file began with station " + station, "keep one station in a file");
            return;
        }
        station = here;
        Integer place = PLACES.get(padded.substring(17, FIRST_VALUE));
        if (place != null) {
            month(number, padded, place);
        }
    }

    private static String shown(String line) {
        return line.length() > 30 ? line.substring(0, 30) + "…" : line;
    }

    private void month(int number, String line, int place) {
        LocalDate first;
        try {
            first = LocalDate.of(Integer.parseInt(line.substring(11, 15)), Integer.parseInt(line.substring(15, 17)), 1);
        } catch (NumberFormatException | DateTimeException notAMonth) {
            problems.add(number, line.substring(11, 17), "this is not a year and month", "columns 12 to 17 hold them");
            return;
        }
        for (int day = 0; day < 31; day++) {
            int at = FIRST_VALUE + day * VALUE_WIDTH;
            value(number, first, day, line.substring(at, at + 5).strip(), line.charAt(at + 6), place);
        }
    }

    private void value(int number, LocalDate first, int day, String text, char quality, int place) {
        int tenths;
        try {
            tenths = text.isEmpty() ? MISSING : Integer.parseInt(text);
        } catch (NumberFormatException notANumber) {
            problems.add(
                    number, text, "the value of day " + (day + 1) + " is not a whole number", "see the column layout");
            return;
        }
        if (tenths == MISSING) {
            return;
        }
        if (day >= first.lengthOfMonth()) {
            problems.add(number, text, "that month has no day " + (day + 1), "see the column layout");
        } else if (quality != ' ') {
            dropped++;
        } else {
            long date = first.toEpochDay() + day;
            days.computeIfAbsent(date, each -> DailySeries.unknown())[place] = tenths / 10.0;
        }
    }

    private void dropContradictions() {
        for (double[] day : days.values()) {
            if (day[0] > day[1]) {
                day[0] = Double.NaN;
                day[1] = Double.NaN;
                dropped += 2;
            }
        }
    }
}

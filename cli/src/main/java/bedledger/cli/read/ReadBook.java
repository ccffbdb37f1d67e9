package bedledger.cli.read;

import bedledger.cli.BookPlace;
import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.language.BadValue;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.BookReader;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.tables.OwnValue;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Range;
import bedledger.projections.tables.Tables;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A book as it is known on a day.
 *
 * @param folder where it lies
 * @param opened its first entry
 * @param farm what the entries written by the end of that day say
 * @param asKnownOn the day, if one was asked for
 * @param today the last day that counts: that day, or today
 */
public record ReadBook(
        BookFolder folder,
        BookKeeping.BookOpened opened,
        Farm farm,
        @Nullable LocalDate asKnownOn,
        LocalDate today) {
    public static ReadBook open(Surroundings around, ReadOptions options) {
        BookFolder folder = BookPlace.find(around, options.book);
        BookReader reader = BookReader.of(folder);
        reader.doubt().ifPresent(doubt -> around.err().println("Careful: " + doubt));
        if (reader.entries().isEmpty() || !(reader.entries().get(0).fact() instanceof BookKeeping.BookOpened opened)) {
            throw new Failure(
                    Exit.NO_INPUT, "The book in '" + folder.root() + "' has no first entry. Take it from your backup.");
        }
        ZoneId zone = zone(opened);
        LocalDate now = LocalDate.ofInstant(around.clock().instant(), zone);
        LocalDate asked = options.asKnownOn == null ? null : day("--as-known-on", options.asKnownOn, now);
        LocalDate today = asked == null ? now : asked;
        List<Entry> known = asked == null ? reader.entries() : writtenBy(reader.entries(), asked, zone);
        return new ReadBook(folder, opened, Farm.of(known), asked, today);
    }

    private static ZoneId zone(BookKeeping.BookOpened opened) {
        try {
            return ZoneId.of(opened.timeZone());
        } catch (DateTimeException unknown) {
            throw new Failure(
                    Exit.REFUSED,
                    "The book counts its days in the time zone '" + opened.timeZone()
                            + "', which this Java does not know. A newer Java may; if none does, the first entry was"
                            + " changed: bedledger verify.");
        }
    }

    /** The longest beginning of the log that was written by the end of the day. */
    private static List<Entry> writtenBy(List<Entry> entries, LocalDate day, ZoneId zone) {
        return entries.stream()
                .takeWhile(
                        entry -> !LocalDate.ofInstant(entry.writtenAt(), zone).isAfter(day))
                .toList();
    }

    private static LocalDate day(String option, String text, LocalDate today) {
        try {
            return new DayWords(today).day(text);
        } catch (BadValue notADay) {
            throw new Failure(Exit.USAGE, notADay.as(option).toString());
        }
    }

    /** The day asked for, or the last day that counts. */
    public LocalDate dayOr(String option, @Nullable String text) {
        return text == null ? today : day(option, text, today);
    }

    public ZoneId zone() {
        return ZoneId.of(opened.timeZone());
    }

    /** The tables, with this farm's own values over them. */
    public Tables tables() {
        return tables(farm.ofKind(BookKeeping.CropAdded.class), farm.ofKind(BookKeeping.OwnValueNoted.class));
    }

    /** The tables with these crops and own values, all in force. */
    public static Tables tables(Collection<Entry> crops, Collection<Entry> own) {
        Map<String, String> added = new LinkedHashMap<>();
        for (Entry entry : crops) {
            BookKeeping.CropAdded crop = (BookKeeping.CropAdded) entry.fact();
            added.put(crop.crop().name(), crop.family());
        }
        Tables tables = Tables.bundled().knowing(added);
        for (Entry entry : own) {
            tables = with((BookKeeping.OwnValueNoted) entry.fact(), tables);
        }
        return tables;
    }

    /** An own value for which the tables have no place leaves them as they are. */
    private static Tables with(BookKeeping.OwnValueNoted noted, Tables tables) {
        try {
            return tables.with(List.of(own(noted, tables)));
        } catch (IllegalArgumentException noPlace) {
            return tables;
        }
    }

    private static OwnValue own(BookKeeping.OwnValueNoted noted, Tables tables) {
        String of = tables.crop(noted.of())
                .map(crop -> crop.name())
                .or(() -> tables.material(noted.of()))
                .orElse(noted.of());
        return new OwnValue(
                of,
                Quantity.parse(noted.coefficient().replace('-', ' ')),
                noted.value().value(),
                range(noted),
                noted.how());
    }

    private static @Nullable Range range(BookKeeping.OwnValueNoted noted) {
        double value = noted.value().value();
        double low = noted.low() == null ? value : noted.low().value();
        double high = noted.high() == null ? value : noted.high().value();
        return low == high ? null : new Range(low, high);
    }

    /** The unit the farm weighs in. */
    public MassUnit massUnit() {
        return opened.units().equals("us") ? MassUnit.pound() : MassUnit.KILOGRAM;
    }

    /** How a sentence on something that is not in the book ends, where only an earlier state of it was asked. */
    public String known() {
        return asKnownOn == null ? "" : ", as known on " + asKnownOn;
    }

    /** What stands above every page of this book. */
    public List<String> banner() {
        String practice = opened.practice() ? "PRACTICE book — " : "";
        return practice.isEmpty() && known().isEmpty() ? List.of() : List.of(practice + opened.farm() + known());
    }
}

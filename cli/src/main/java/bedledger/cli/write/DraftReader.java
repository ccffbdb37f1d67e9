package bedledger.cli.write;

import bedledger.cli.read.DayWords;
import bedledger.domain.Draft;
import bedledger.language.ActKind;
import bedledger.language.Area;
import bedledger.language.Ask;
import bedledger.language.BadValue;
import bedledger.language.BedId;
import bedledger.language.BookKeeping;
import bedledger.language.Condition;
import bedledger.language.CropName;
import bedledger.language.DocumentId;
import bedledger.language.Fact;
import bedledger.language.FactReader;
import bedledger.language.Feedstock;
import bedledger.language.FieldId;
import bedledger.language.Harvesting;
import bedledger.language.Head;
import bedledger.language.Land;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import bedledger.language.MaterialName;
import bedledger.language.PersonId;
import bedledger.language.PileId;
import bedledger.language.Problem;
import bedledger.language.SampleId;
import bedledger.language.SeedLotId;
import bedledger.language.Stock;
import bedledger.language.Temperature;
import bedledger.language.TrayId;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Turns what was said, by option or by column, into a draft; finds every problem at once. */
public final class DraftReader {
    private final Known known;
    private final PlaceWords places;
    private final DayWords days;
    /** Hotter than any compost pile gets (judgement): a Fahrenheit figure without its unit. */
    private static final double HOTTEST_CELSIUS = 85;

    private static final Pattern DUE = Pattern.compile("(\\S+) by ([^:]+):(.+)", Pattern.DOTALL);

    private final PersonId writer;
    private final String temperatureUnit;
    private final List<Problem> problems = new ArrayList<>();
    private @Nullable Draft readable;

    DraftReader(Known known, DayWords days, PersonId writer, String units) {
        this.known = known;
        this.places = new PlaceWords(known);
        this.days = days;
        this.writer = writer;
        this.temperatureUnit = units.equals("us") ? "F" : "C";
    }

    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** The fact of the last draft that was refused, where only its head is at fault and its day is none of the faults. */
    Optional<Draft> readable() {
        return Optional.ofNullable(readable);
    }

    /** Reads one act; the texts are by option, each already one value or, for a list, any number of words. */
    public Optional<Draft> read(ActKind kind, Map<String, List<String>> said) {
        problems.clear();
        readable = null;
        Head head = head(kind, said);
        boolean dayStands =
                problems.stream().noneMatch(problem -> Set.of("on", "from").contains(problem.what()));
        Map<String, List<String>> texts = new LinkedHashMap<>();
        for (Ask ask : kind.asks()) {
            List<String> given = said.getOrDefault(ask.option(), List.of());
            if (!given.isEmpty()) {
                texts.put(ask.option(), resolved(kind, ask, given, head.doneOn()));
            }
        }
        nameLot(kind, texts, head.doneOn());
        FactReader reader = new FactReader(kind);
        Optional<Fact> fact = reader.read(texts);
        reader.problems().stream().filter(problem -> !alreadyTold(problem)).forEach(problems::add);
        fact.filter(BookKeeping.OwnValueNoted.class::isInstance)
                .ifPresent(noted -> problems.addAll(known.faults((BookKeeping.OwnValueNoted) noted)));
        fact.filter(BookKeeping.ReadingChosen.class::isInstance)
                .ifPresent(chosen -> problems.addAll(Known.faults((BookKeeping.ReadingChosen) chosen)));
        Optional<Draft> draft = fact.map(read -> new Draft(head, read));
        readable = dayStands ? draft.orElse(null) : null;
        return problems.isEmpty() ? draft : Optional.empty();
    }

    private boolean alreadyTold(Problem problem) {
        return problems.stream().anyMatch(told -> told.what().equals(problem.what()));
    }

    private void nameLot(ActKind kind, Map<String, List<String>> texts, LocalDate day) {
        if (kind.type() == Harvesting.Harvested.class && !texts.containsKey("lot")) {
            // Of an unknown crop, which is a problem told already, the lot's name is no second one.
            List<String> crop = texts.getOrDefault("crop", List.of());
            String named = crop.isEmpty() ? "lot" : crop.get(0);
            texts.put("lot", List.of(places.newLot(named, day).toString()));
        }
    }

    private List<String> resolved(ActKind kind, Ask ask, List<String> given, LocalDate day) {
        List<String> words = ask.list() ? words(ask, given) : given;
        List<String> resolved = new ArrayList<>();
        for (String word : words) {
            try {
                resolved.addAll(resolve(kind, ask, word, day));
            } catch (BadValue bad) {
                problems.add(bad.as(ask.option()));
            }
        }
        return ask.type() == BedId.class ? resolved.stream().distinct().toList() : resolved;
    }

    private static List<String> words(Ask ask, List<String> given) {
        String apart = isWordy(ask) ? ";" : isPartedByBlanks(ask) ? "[,;\\s]+" : "[,;]";
        return given.stream()
                .flatMap(text -> Arrays.stream(text.split(apart)))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static boolean isWordy(Ask ask) {
        return ask.type() == Condition.class || ask.type() == MaterialName.class;
    }

    /** Whether a blank ends one value of a list and begins the next. */
    static boolean isPartedByBlanks(Ask ask) {
        return !isWordy(ask) && ask.type() != String.class && ask.type() != Feedstock.class;
    }

    private List<String> resolve(ActKind kind, Ask ask, String word, LocalDate day) {
        Class<?> type = ask.type();
        if (type == BedId.class) {
            boolean newOnes = kind.type() == Land.BedLaidOut.class || ask.name().equals("into");
            return places.beds(word, newOnes);
        }
        if (type == LotId.class) {
            return List.of(lot(kind, ask, word, day));
        }
        if (type == LotAmount.class && word.contains("=")) {
            int equals = word.indexOf('=');
            return List.of(lot(kind, ask, word.substring(0, equals), day) + word.substring(equals));
        }
        if (type == MaterialName.class) {
            return List.of(
                    kind.type() == Stock.MaterialListed.class
                            ? places.place("material", word)
                            : places.listedMaterial(word));
        }
        if (type == CropName.class) {
            return List.of(kind.type() == BookKeeping.CropAdded.class ? word : crop(word));
        }
        if (type == FieldId.class) {
            return List.of(places.place("field", word));
        }
        if (type == PileId.class) {
            return List.of(places.place("pile", word));
        }
        if (type == SeedLotId.class) {
            return List.of(places.place("seedLot", word));
        }
        if (type == TrayId.class) {
            return List.of(places.place("tray", word));
        }
        if (type == SampleId.class) {
            return List.of(places.place("sample", word));
        }
        if (type == Condition.class) {
            return List.of(condition(word));
        }
        if (type == LocalDate.class) {
            return List.of(days.day(word).toString());
        }
        return List.of(type == Temperature.class ? reading(word) : word);
    }

    /** A lot that the act makes is of the year of the act; any other is looked up. */
    private String lot(ActKind kind, Ask ask, String word, LocalDate day) {
        boolean newOne = kind.type() == Harvesting.Harvested.class
                || kind.type() == Harvesting.LotFound.class
                || ask.name().equals("into");
        return newOne && !word.contains("/") ? day.getYear() + "/" + word : places.lot(word, day.getYear());
    }

    /** "C1 by 1 mar: …" with the day written out; what is no condition passes as typed, for its own reading says what is wrong. */
    private String condition(String word) {
        Matcher shape = DUE.matcher(word);
        return shape.matches() ? shape.group(1) + " by " + days.day(shape.group(2)) + ":" + shape.group(3) : word;
    }

    private String reading(String word) {
        if (!word.matches("-?[0-9]+(\\.[0-9]+)?")) {
            return word;
        }
        if (temperatureUnit.equals("C") && Double.parseDouble(word) > HOTTEST_CELSIUS) {
            throw new BadValue(
                    word, "this book counts in °C, and no pile gets so hot", "write " + word + "F if it is Fahrenheit");
        }
        return word + temperatureUnit;
    }

    private String crop(String word) {
        return known.crop(word)
                .map(CropName::name)
                .orElseThrow(() -> new BadValue(word, "the crop table has no such crop", nearest(word)));
    }

    private String nearest(String word) {
        List<String> near = known.nearestCrops(word);
        String add = "a crop the table lacks is added with: did add-crop \"" + word + "\" --family FAMILY";
        return near.isEmpty() ? add : "did you mean " + String.join(" or ", near) + "? If not, " + add;
    }

    private Head head(ActKind kind, Map<String, List<String>> said) {
        LocalDate doneOn =
                Objects.requireNonNull(one(said, HeadOptions.dayOption(kind, said), this::past, days.today()));
        Integer place = whole(said, "place-in-day", 1, 999);
        return new Head(
                doneOn,
                one(said, "at", DayWords::time, null),
                place == null ? 0 : place,
                one(said, "noted-on", this::past, null),
                one(said, "done-by", PersonId::new, writer),
                one(said, "area", Area::parse, null),
                whole(said, "people", 1, 200),
                whole(said, "minutes", 1, 1440),
                text(said, "equipment"),
                text(said, "note"),
                documents(said),
                null);
    }

    private LocalDate past(String text) {
        LocalDate day = days.day(text);
        if (day.isAfter(days.today())) {
            throw new BadValue(
                    text, "that day is to come; today is " + days.today(), "write it on the day, or check the year");
        }
        return day;
    }

    private List<DocumentId> documents(Map<String, List<String>> said) {
        return said.getOrDefault("document", List.of()).stream()
                .flatMap(text -> Stream.ofNullable(read("document", text, DocumentId::parse, null)))
                .toList();
    }

    private @Nullable String text(Map<String, List<String>> said, String option) {
        return one(said, option, text -> (String) FactReader.parse(String.class, text), null);
    }

    private @Nullable Integer whole(Map<String, List<String>> said, String option, int least, int most) {
        return one(
                said,
                option,
                text -> {
                    int value = (Integer) FactReader.parse(Integer.class, text);
                    if (value < least || value > most) {
                        throw new BadValue(text, "it lies outside " + least + " to " + most, "check the number");
                    }
                    return value;
                },
                null);
    }

    private <T> @Nullable T one(
            Map<String, List<String>> said, String option, Function<String, T> parse, @Nullable T otherwise) {
        List<String> given = said.getOrDefault(option, List.of());
        if (given.size() > 1) {
            problems.add(new Problem(option, String.join(" ", given), "it is given twice", "leave one out"));
        }
        return given.isEmpty() ? otherwise : read(option, given.get(0), parse, otherwise);
    }

    private <T> @Nullable T read(String option, String text, Function<String, T> parse, @Nullable T otherwise) {
        try {
            return parse.apply(text);
        } catch (BadValue bad) {
            if (problems.stream().noneMatch(told -> told.what().equals(option))) {
                problems.add(bad.as(option));
            }
            return otherwise;
        }
    }
}

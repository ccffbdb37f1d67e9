package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.cli.prove.Judging;
import bedledger.cli.read.ReadBook;
import bedledger.domain.ActIds;
import bedledger.domain.Book;
import bedledger.domain.Draft;
import bedledger.language.BookKeeping;
import bedledger.language.Correction;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.FieldId;
import bedledger.language.LotId;
import bedledger.language.PersonId;
import bedledger.language.PileId;
import bedledger.language.Place;
import bedledger.language.Refused;
import bedledger.ledger.store.BookFolder;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The order of the work counts, never the order of writing, nor the order in which entries are handed to the fold. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OrderTest {
    private static final LocalDate END = LocalDate.parse(Season.END);
    private final Path folder;
    private final List<Entry> entries;
    private final Map<String, Object> folded;
    private final Map<String, JsonNode> answers;

    OrderTest(@TempDir Path folder) {
        this.folder = folder;
        Desk desk = Season.quickly(folder);
        this.entries = desk.entries("farm");
        this.folded = fold(entries);
        this.answers = Answers.of(desk, "farm", List.of(Season.END));
    }

    static IntStream foldSeeds() {
        return IntStream.rangeClosed(1, 100);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("foldSeeds")
    void everyOrderOfHandingInGivesTheSame(int seed) {
        List<Entry> shuffled = new ArrayList<>(entries);
        java.util.Collections.shuffle(shuffled, new Random(seed));
        assertThat(shuffled).isNotEqualTo(entries);
        assertThat(fold(shuffled)).isEqualTo(folded);
    }

    /** Timelines of all places, findings and returned, as of the end of the season. */
    private Map<String, Object> fold(List<Entry> handedIn) {
        Farm farm = Farm.of(handedIn);
        BookKeeping.BookOpened opened = (BookKeeping.BookOpened) entries.get(0).fact();
        ReadBook book = new ReadBook(new BookFolder(folder), opened, farm, null, END);
        Map<String, Object> all = new LinkedHashMap<>();
        farm.places().forEach(place -> all.put(place.key(), timeline(farm, place)));
        Returned returned = Returned.of(farm, book.tables(), END, Options.DEFAULT);
        all.put("findings", Judging.of(book, END).all());
        all.put("returned", returned.pieces());
        all.put("left", returned.left());
        all.put("not counted", returned.notCounted());
        assertThat(all).hasSizeGreaterThan(30);
        return all;
    }

    private static Object timeline(Farm farm, Place place) {
        if (place instanceof bedledger.language.BedId bed) {
            return farm.bed(bed).steps();
        }
        if (place instanceof FieldId field) {
            return farm.field(field).steps();
        }
        if (place instanceof PileId pile) {
            return farm.pile(pile).steps();
        }
        return place instanceof LotId lot ? farm.lot(lot).steps() : farm.entries(place);
    }

    static IntStream writingSeeds() {
        return IntStream.rangeClosed(1, 20);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("writingSeeds")
    void everyOrderOfWritingThatIsAdmittedGivesTheSame(int seed) {
        Desk desk = new Desk(folder.resolve("order-" + seed));
        desk.run("new farm --farm \"Hollow Lane Farm\" --practice --units us"
                        + " --time-zone America/New_York --written 2025-12-31T18:00")
                .done();
        int refusals = write(desk.file("farm"), desk.clock, seed);
        assertThat(refusals).as("drafts refused on the way, and tried again").isPositive();
        assertThat(desk.entries("farm").stream()
                        .map(Season::payload)
                        .filter(OrderTest::isWork)
                        .sorted())
                .isEqualTo(entries.stream()
                        .map(Season::payload)
                        .filter(OrderTest::isWork)
                        .sorted()
                        .toList());
        Answers.same(Answers.of(desk, "farm", List.of(Season.END)), answers);
    }

    private static boolean isWork(String payload) {
        return !payload.startsWith("book.opened");
    }

    /** Writes the season in a random order; what is refused is tried again after the rest. */
    private int write(Path book, SteppingClock clock, int seed) {
        List<Entry> left = new ArrayList<>(entries.subList(1, entries.size()));
        java.util.Collections.shuffle(left, new Random(seed));
        Map<Long, Long> numbers = new HashMap<>();
        int refused = 0;
        try (Book open = Book.open(new BookFolder(book), clock, new ActIds(new Random(seed)))) {
            while (!left.isEmpty()) {
                List<Entry> again = new ArrayList<>();
                left.forEach(entry -> {
                    if (!write(open, entry, numbers)) {
                        again.add(entry);
                    }
                });
                assertThat(again).as("no draft was admitted any more").hasSizeLessThan(left.size());
                refused += again.size();
                left = again;
            }
        }
        return refused;
    }

    private static boolean write(Book book, Entry entry, Map<Long, Long> numbers) {
        PersonId writer = new PersonId("owner");
        Correction corrects = entry.head().corrects();
        Draft draft = new Draft(entry.head(), entry.fact());
        try {
            if (corrects == null) {
                book.write(List.of(draft), writer, null);
            } else if (numbers.containsKey(corrects.number())) {
                long wrong = Objects.requireNonNull(numbers.get(corrects.number()));
                book.correct(wrong, draft, corrects.reason(), writer, null);
            } else {
                return false;
            }
            numbers.put(entry.number(), book.size());
            return true;
        } catch (Refused refused) {
            return false;
        }
    }
}

package bedledger.projections.history;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.SeasonBook;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class BedHistoryTest {
    private static final BedId W1 = new BedId("W1");
    private static final LocalDate NEW_YEARS_EVE = LocalDate.parse("2025-12-31");
    private final SeasonBook book = new SeasonBook();

    @BeforeEach
    void layOut() {
        book.on("2025-02-01").did("register-field", "field=West", "gross=0.02ha");
        book.did("lay-out", "beds=W1 W2", "field=West", "length=20m", "width=0.75m");
    }

    private BedHistory history(BedId bed, LocalDate day) {
        return BedHistory.of(book.farm(), bed, day);
    }

    private static HistoryLine line(BedHistory history, Entry entry) {
        return history.lines().stream()
                .filter(line -> line.number() == entry.number())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void saysWhatIsInAndOnTheBedWithTheEntriesBehindIt() {
        Entry kale = book.on("2025-04-20").did("transplant", "beds=W1", "crop=kale");
        Entry drip = book.did("lay-drip", "beds=W1", "lines=2");
        book.on("2025-08-30").did("harvest", "beds=W1", "crop=kale", "quantity=9kg", "lot=2025/K-1", "last=yes");
        book.on("2025-09-01").did("pull-drip", "beds=W1");
        Entry tarp = book.did("tarp", "beds=W1", "material=silage film");

        assertThat(history(W1, LocalDate.parse("2025-05-01")).sentences())
                .containsExactly(
                        "in field West, 20 m × 0.75 m, 15.00 m²",
                        "kale since 2025-04-20 (#" + kale.number() + ")",
                        "drip: 2 lines since 2025-04-20 (#" + drip.number() + ")");
        assertThat(history(W1, NEW_YEARS_EVE).sentences())
                .containsExactly(
                        "in field West, 20 m × 0.75 m, 15.00 m²",
                        "under silage film since 2025-09-01 (#" + tarp.number() + ")");
        assertThat(history(W1, LocalDate.parse("2025-01-15")).sentences())
                .containsExactly("there is no such bed on 2025-01-15");
        assertThat(history(new BedId("W2"), NEW_YEARS_EVE).sentences())
                .contains("nothing stands in it and nothing was laid on it, as far as the book says");
    }

    @Test
    void aReplacedEntryKeepsItsOldValuesItsReasonAndTheNumberOfItsAnswer() {
        book.on("2025-04-20").did("transplant", "beds=W1", "crop=kale");
        Entry wrong = book.on("2025-07-02").did("harvest", "beds=W1", "crop=kale", "quantity=61.2kg", "lot=2025/K-1");
        book.writtenAt("2025-07-05T20:00:00Z");
        Entry right = book.correct(
                wrong, "16.2 on the slip", "harvest", "beds=W1", "crop=kale", "quantity=16.2kg", "lot=2025/K-1");

        BedHistory history = history(W1, NEW_YEARS_EVE);

        HistoryLine old = line(history, wrong);
        assertThat(old.status()).isEqualTo(HistoryLine.Status.REPLACED);
        assertThat(old.words()).isEqualTo("harvest: W1; crop kale; quantity 61.2 kg; lot 2025/K-1");
        assertThat(old.answer())
                .contains(new HistoryLine.Answer(
                        right.number(),
                        "16.2 on the slip",
                        "harvest: W1; crop kale; quantity 16.2 kg; lot 2025/K-1",
                        LocalDate.parse("2025-07-05")));
        assertThat(line(history, right).status()).isEqualTo(HistoryLine.Status.IN_FORCE);
        assertThat(line(history, right).corrects().orElseThrow().words()).contains("61.2 kg");
    }

    @Test
    void anEntryMovedToAnotherBedIsSeenFromBoth() {
        Entry wrong = book.on("2025-05-02").did("sow", "beds=W1", "crop=radish");
        Entry right = book.correct(wrong, "it was W2", "sow", "beds=W2", "crop=radish");

        assertThat(line(history(W1, NEW_YEARS_EVE), wrong)
                        .answer()
                        .orElseThrow()
                        .words())
                .isEqualTo("sow: W2; crop radish");
        assertThat(line(history(new BedId("W2"), NEW_YEARS_EVE), right)
                        .corrects()
                        .orElseThrow()
                        .words())
                .isEqualTo("sow: W1; crop radish");
    }

    @Test
    void aStruckEntryIsShownAsStruckAndAnAnswerTooLateAsWithoutEffect() {
        Entry tarp = book.on("2025-05-02").did("tarp", "beds=W1");
        Entry strike = book.strike(tarp, "it was never laid");
        Entry late = book.correct(tarp, "it was W2", "tarp", "beds=W1 W2");

        BedHistory history = history(W1, NEW_YEARS_EVE);

        assertThat(line(history, tarp).status()).isEqualTo(HistoryLine.Status.STRUCK);
        assertThat(line(history, tarp).answer().orElseThrow().number()).isEqualTo(strike.number());
        assertThat(line(history, late).status()).isEqualTo(HistoryLine.Status.WITHOUT_EFFECT);
        assertThat(history.sentences()).noneMatch(each -> each.contains("tarp"));
    }

    @Test
    void aLateEntryStandsOnItsDayWithItsLagAndDaysAreTheBooks() {
        SeasonBook zoned = new SeasonBook();
        zoned.on("2025-01-02")
                .add(new bedledger.language.BookKeeping.BookOpened(
                        "Reed End", true, "Pacific/Auckland", "us", "metric"));
        zoned.did("lay-out", "beds=W1", "field=West", "length=20m", "width=0.75m");
        zoned.on("2025-06-01").did("tarp", "beds=W1");
        zoned.on("2025-06-20").did("check-tarp", "beds=W1", "leaves=soft");
        Entry late = zoned.on("2025-06-04")
                .writtenAt("2025-06-30T20:00:00Z")
                .did("harrow", "beds=W1", "tarp-folded-back=yes");

        List<HistoryLine> lines = BedHistory.of(zoned.farm(), W1, NEW_YEARS_EVE).lines();

        assertThat(lines).extracting(HistoryLine::number).containsExactly(2L, 3L, late.number(), 4L);
        // 20:00 UTC on 30 June is 1 July in Auckland.
        assertThat(lines.get(2).writtenOn()).isEqualTo("2025-07-01");
        assertThat(lines.get(2).lag()).isEqualTo(27);
    }

    @Test
    void whatDoesNotFitSaysWhy() {
        Entry lifted = book.on("2025-05-02").did("untarp", "beds=W1");

        assertThat(line(history(W1, NEW_YEARS_EVE), lifted).doesNotFit())
                .containsExactly("no tarp lies on it on that day");
    }

    @Test
    void aPartShowsTheWholesEntriesUpToTheSplitReplacedOnesIncluded() {
        Entry wrong = book.on("2025-03-01").did("tarp", "beds=W1", "material=fleece");
        book.correct(wrong, "film", "tarp", "beds=W1", "material=silage film");
        book.on("2025-03-20").did("split-bed", "bed=W1", "into=W1a W1b", "lengths=12m 8m");
        book.on("2025-04-01").did("untarp", "beds=W1b");

        BedHistory part = history(new BedId("W1a"), NEW_YEARS_EVE);

        assertThat(part.lines()).extracting(HistoryLine::number).containsExactly(2L, 3L, 4L, 5L);
        assertThat(part.sentences()).anyMatch(each -> each.startsWith("under silage film since 2025-03-01"));
    }

    @Test
    void listsTheBedsThereAreOnADay() {
        book.on("2025-06-01").did("lay-out", "beds=W10 W3", "field=West", "length=10m", "width=0.75m");

        assertThat(BedList.of(book.farm(), LocalDate.parse("2025-05-01")).rows())
                .extracting(row -> row.bed().name())
                .containsExactly("W1", "W2");
        assertThat(BedList.of(book.farm(), NEW_YEARS_EVE).rows())
                .extracting(row -> row.bed().name())
                .containsExactly("W1", "W2", "W3", "W10");
    }

    @Test
    void factsAreSaidInThePhrasesOfTheirKind() {
        Entry flailed = book.on("2025-06-01").did("flail", "beds=W1 W2", "passes=2", "half-bed=yes");
        Entry quadrats = book.did("quadrats", "bed=W1", "weights=610g 540g", "frame=0.25m2", "when=before-flailing");

        assertThat(FactWords.of(flailed.fact())).isEqualTo("flail: W1 W2; passes 2; half-bed yes");
        assertThat(FactWords.of(quadrats.fact()))
                .isEqualTo("quadrats: W1 610 g 540 g; frame 0.25 m2; when before-flailing");
        assertThat(FactWords.of(new bedledger.language.BookKeeping.Struck())).isEqualTo("record.struck");
    }
}

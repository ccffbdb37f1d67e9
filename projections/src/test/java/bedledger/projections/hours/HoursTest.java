package bedledger.projections.hours;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Head;
import bedledger.language.SeasonBook;
import bedledger.projections.estimate.Estimate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class HoursTest {
    private static final LocalDate FROM = LocalDate.parse("2025-01-01");
    private static final LocalDate TO = LocalDate.parse("2025-12-31");
    private final SeasonBook book = new SeasonBook();
    private final List<Entry> timed = new ArrayList<>();

    HoursTest() {
        book.on("2025-02-20").did("register-field", "field=River", "gross=0.032ha");
        book.did("lay-out", "beds=R1 R2", "field=River", "length=30m", "width=0.75m");
        book.did("lay-out", "beds=R3", "field=River", "length=15m", "width=0.75m");
    }

    /** The same entries, those that were timed with their people and minutes. */
    private Farm farm() {
        List<Entry> all = new ArrayList<>(book.entries());
        timed.forEach(each -> all.set((int) each.number() - 1, each));
        return Farm.of(all);
    }

    private void took(Entry entry, int people, int minutes) {
        Head head = entry.head();
        timed.add(with(
                entry,
                new Head(
                        head.doneOn(),
                        head.time(),
                        head.placeInDay(),
                        null,
                        null,
                        null,
                        people,
                        minutes,
                        null,
                        null,
                        List.of(),
                        null),
                entry.fact()));
    }

    private static Entry with(Entry entry, Head head, Fact fact) {
        return new Entry(
                entry.number(), entry.act(), entry.sequence(), entry.writtenAt(), entry.writtenBy(), head, fact);
    }

    private void flip() {
        book.on("2025-04-18").did("transplant", "beds=R1 R2", "crop=broccoli");
        book.did("lay-drip", "beds=R1 R2", "lines=2");
        book.on("2025-07-06")
                .did("harvest", "beds=R1 R2", "crop=broccoli", "quantity=12kg", "lot=2025/B-1", "last=yes");
        took(book.on("2025-07-08").did("pull-drip", "beds=R1 R2"), 4, 12);
        book.did("flail", "beds=R1 R2", "passes=2");
        book.did("tarp", "beds=R1 R2");
    }

    private static HoursLine named(List<HoursLine> lines, String start) {
        return lines.stream()
                .filter(line -> line.of().startsWith(start))
                .findFirst()
                .orElseThrow(() -> new AssertionError(start + " is not in " + lines));
    }

    @Test
    void peopleTimesMinutesAreSharedByAreaOverTheBedsOfAnAct() {
        flip();

        Hours hours = Hours.of(farm(), FROM, TO, List.of());

        assertThat(named(hours.byOperation(), "pull-drip").minutes()).isEqualTo(48);
        assertThat(named(hours.byBed(), "R1").minutes()).isCloseTo(24, within(1e-9));
        assertThat(named(hours.byBed(), "R2").minutes()).isCloseTo(24, within(1e-9));
        assertThat(named(hours.byBed(), "R1").byArea()).isTrue();
    }

    @Test
    void stepsWithoutMinutesAreCountedAndAddNothing() {
        flip();

        HoursLine flip = named(Hours.of(farm(), FROM, TO, List.of()).byFlip(), "R1: broccoli ended 2025-07-06");

        assertThat(flip.words()).isEqualTo("1 of 3 steps have minutes");
        assertThat(flip.isComplete()).isFalse();
        assertThat(flip.minutes()).isCloseTo(24, within(1e-9));
        assertThat(Hours.of(farm(), FROM, TO, List.of()).all().words()).isEqualTo("1 of 6 steps have minutes");
    }

    @Test
    void workAfterACropIsToldFromWorkInIt() {
        flip();

        List<HoursLine> crops = Hours.of(farm(), FROM, TO, List.of()).byCrop();

        assertThat(crops).extracting(HoursLine::of).containsExactly("after broccoli", "broccoli");
        assertThat(named(crops, "after broccoli").minutes()).isEqualTo(48);
        assertThat(named(crops, "broccoli").withMinutes()).isZero();
    }

    @Test
    void minutesWithoutPeopleAreNoHours() {
        Entry entry = book.on("2025-03-01").did("broadfork", "beds=R3");
        Head head = entry.head();
        timed.add(with(
                entry,
                new Head(
                        head.doneOn(),
                        null,
                        head.placeInDay(),
                        null,
                        null,
                        null,
                        null,
                        40,
                        null,
                        null,
                        List.of(),
                        null),
                entry.fact()));

        assertThat(Hours.of(farm(), FROM, TO, List.of()).all().words()).isEqualTo("0 of 1 step has minutes");
    }

    @Test
    void onlyTheDaysAndTheBedsAskedAbout() {
        flip();
        took(book.on("2025-09-01").did("broadfork", "beds=R2 R3"), 1, 90);

        Hours autumn = Hours.of(farm(), LocalDate.parse("2025-08-01"), TO, List.of(new BedId("R3")));

        assertThat(autumn.all().minutes()).isCloseTo(30, within(1e-9));
        assertThat(autumn.all().steps()).isEqualTo(1);
    }

    @Test
    void theBedsTogetherAreTheWhole() {
        flip();
        took(book.on("2025-09-01").did("broadfork", "beds=R1 R2 R3"), 2, 35);

        Hours hours = Hours.of(farm(), FROM, TO, List.of());

        double beds = hours.byBed().stream().mapToDouble(HoursLine::minutes).sum();
        assertThat(beds).isCloseTo(hours.all().minutes(), within(1e-9)).isCloseTo(48 + 70, within(1e-9));
    }

    @Test
    void withoutATimedHaulOffNothingIsSaidOfWhatWasSaved() {
        flip();

        InPlace inPlace = InPlace.of(farm(), FROM, TO, List.of());

        assertThat(inPlace.flips()).isEqualTo(2);
        assertThat(inPlace.squareMetres()).isCloseTo(45, within(1e-9));
        assertThat(inPlace.hauled()).isEmpty();
        assertThat(inPlace.saved()).isEmpty();
        assertThat(inPlace.missing())
                .containsExactly(
                        "how long this farm takes to haul: no such act is on record",
                        "how long this farm takes to flail: none of its 1 on record has people and minutes");
    }

    @Test
    void whatWasSavedComesFromTheFarmsOwnTimedActs() {
        flip();
        Entry flail = book.entries().stream()
                .filter(each -> each.kind().word().equals("flail"))
                .findFirst()
                .orElseThrow();
        took(flail, 1, 18);
        book.on("2025-04-20").did("sow", "beds=R3", "crop=carrot");
        book.on("2025-08-01").did("harvest", "beds=R3", "crop=carrot", "quantity=30kg", "lot=2025/A-1", "last=yes");
        took(book.on("2025-08-02").did("haul", "beds=R3", "crop=carrot", "weight=18kg", "roots=cut"), 2, 27);

        InPlace inPlace = InPlace.of(farm(), FROM, TO, List.of());

        // 54 minutes on 11.25 m2 hauled, 18 on 45 m2 flailed; 45 m2 were left in place.
        assertThat(inPlace.hauling().timed()).isEqualTo(1);
        assertThat(inPlace.hauled().orElseThrow().best()).isCloseTo(216, within(1e-9));
        assertThat(inPlace.hauling().perKilogram().orElseThrow().best()).isCloseTo(3, within(1e-9));
        assertThat(inPlace.saved().orElseThrow().best()).isCloseTo(216 - 18, within(1e-9));
        assertThat(inPlace.saved().orElseThrow().hasBand()).isFalse();
    }

    @Test
    void severalTimedActsGiveAnInterval() {
        book.on("2025-03-01");
        for (int minutes : List.of(9, 11, 10)) {
            took(book.did("haul", "beds=R3", "weight=10kg"), 1, minutes);
        }

        Estimate rate = InPlace.of(farm(), FROM, TO, List.of())
                .hauling()
                .perSquareMetre()
                .orElseThrow();

        // mean 10 on 11.25 m2; t 4.303, standard error 1/sqrt(3).
        assertThat(rate.best()).isCloseTo(10 / 11.25, within(1e-9));
        assertThat(rate.high() - rate.best()).isCloseTo(4.3027 / Math.sqrt(3) / 11.25, within(1e-4));
    }
}

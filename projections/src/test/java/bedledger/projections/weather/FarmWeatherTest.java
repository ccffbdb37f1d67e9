package bedledger.projections.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.Refused;
import bedledger.language.SeasonBook;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FarmWeatherTest {
    private static final LocalDate LATEST = LocalDate.parse("2026-12-31");
    private final SeasonBook book = new SeasonBook();

    private static DailyFile csv(String text) {
        return CsvWeather.read("station.csv", new StringReader(text));
    }

    private static Normals normals() {
        return Normals.read(
                "normals.csv",
                new StringReader("month,min_c,max_c,rain_mm\n"
                        + IntStream.rangeClosed(1, 12)
                                .mapToObj(month -> month + "," + month + "," + (month + 10) + ",90")
                                .collect(Collectors.joining("\n"))));
    }

    private FarmWeather weather(Optional<Normals> normals, DailyFile... files) {
        return FarmWeather.of(book.farm(), List.of(files), normals, LATEST);
    }

    private static DayWeather on(Weather weather, String day) {
        return weather.on(LocalDate.parse(day)).orElseThrow();
    }

    @Test
    void whatTheBookNotesWinsForItsDay() {
        book.on("2025-07-02").did("weather", "min=9C", "max=21C", "rain=4mm");
        Weather weather = weather(
                Optional.of(normals()), csv("date,min_c,max_c,rain_mm\n2025-07-01,5,15,0\n2025-07-02,6,16,1\n"));
        assertThat(on(weather, "2025-07-01").origin()).isEqualTo(Origin.CSV_FILE);
        assertThat(on(weather, "2025-07-02").mean()).isEqualTo(15);
        assertThat(on(weather, "2025-07-02").rainMm()).hasValue(4);
        assertThat(on(weather, "2025-07-03").origin()).isEqualTo(Origin.NORMALS);
    }

    @Test
    void noteOfRainAloneTakesItsTemperaturesFromTheFile() {
        book.on("2025-07-02").did("weather", "rain=12mm");
        DayWeather day = on(weather(Optional.empty(), csv("date,min_c,max_c\n2025-07-02,6,16\n")), "2025-07-02");
        assertThat(day.origin()).isEqualTo(Origin.CSV_FILE);
        assertThat(day.rainMm()).hasValue(12);
        assertThat(day.rainOrigin()).contains(Origin.NOTED);
    }

    @Test
    void noteOfTheMinimumAloneIsNotUsedAndIsNamed() {
        book.on("2025-07-02").did("weather", "min=9C");
        FarmWeather weather = weather(Optional.of(normals()));
        assertThat(on(weather, "2025-07-02").origin()).isEqualTo(Origin.NORMALS);
        assertThat(weather.halfNoted()).containsExactly(LocalDate.parse("2025-07-02"));
    }

    @Test
    void laterNoteOfTheSameDayWinsValueByValue() {
        book.on("2025-07-02").did("weather", "min=9C", "max=21C", "rain=4mm");
        book.did("weather", "max=25C");
        DayWeather day = on(weather(Optional.empty()), "2025-07-02");
        assertThat(day.minC()).isEqualTo(9);
        assertThat(day.maxC()).isEqualTo(25);
    }

    @Test
    void anUnknownRainIsNotADryDay() {
        assertThat(on(weather(Optional.empty(), csv("date,min_c,max_c,rain_mm\n2025-07-02,6,16,\n")), "2025-07-02")
                        .rainMm())
                .isEmpty();
    }

    @Test
    void rainOfANormalMonthFallsInSpellsAndAddsUp() {
        Weather weather = weather(Optional.of(normals()));
        double june = 0;
        int rainy = 0;
        for (int day = 1; day <= 30; day++) {
            double rain = on(weather, "2025-06-%02d".formatted(day)).rainMm().orElseThrow();
            june += rain;
            rainy += rain > 0 ? 1 : 0;
        }
        assertThat(june).isCloseTo(90, within(1e-9));
        assertThat(rainy).isEqualTo(10);
    }

    @Test
    void withoutNormalsTheSameDaysOfOtherYearsStandIn() {
        String year = IntStream.range(0, 365)
                .mapToObj(LocalDate.parse("2024-01-01")::plusDays)
                .map(day -> day + "," + day.getMonthValue() + "," + (day.getMonthValue() + 10) + ",2")
                .collect(Collectors.joining("\n"));
        Weather weather = weather(Optional.empty(), csv("date,min_c,max_c,rain_mm\n" + year));
        DayWeather stand = on(weather, "2025-07-15");
        assertThat(stand.origin()).isEqualTo(Origin.SAME_DAYS);
        assertThat(stand.mean()).isCloseTo(12, within(1e-9));
    }

    @Test
    void twoWeeksOfJulySayNothingOfDecember() {
        String weeks = IntStream.range(0, 20)
                .mapToObj(LocalDate.parse("2025-07-01")::plusDays)
                .map(day -> day + ",10,20")
                .collect(Collectors.joining("\n"));
        Weather weather = weather(Optional.empty(), csv("date,min_c,max_c\n" + weeks));
        assertThat(weather.on(LocalDate.parse("2025-12-01"))).isEmpty();
        assertThat(weather.over(LocalDate.parse("2025-12-01"), LocalDate.parse("2025-12-03"))
                        .words())
                .isEqualTo("no weather; 3 days missing, the first 2025-12-01");
    }

    @Test
    void nothingMeasuredAfterTheLastDayAskedAboutCounts() {
        DailyFile file = csv("date,min_c,max_c\n2025-07-01,5,15\n2025-07-02,6,16\n");
        FarmWeather asThen =
                FarmWeather.of(book.farm(), List.of(file), Optional.of(normals()), LocalDate.parse("2025-07-01"));
        assertThat(on(asThen, "2025-07-01").origin()).isEqualTo(Origin.CSV_FILE);
        assertThat(on(asThen, "2025-07-02").origin()).isEqualTo(Origin.NORMALS);
        assertThat(asThen.measuredTo()).contains(LocalDate.parse("2025-07-01"));
    }

    @Test
    void soilFollowsTheAirOfTheLastDays() {
        Weather weather = weather(
                Optional.empty(),
                csv("date,min_c,max_c\n"
                        + IntStream.range(0, 7)
                                .mapToObj(at -> LocalDate.parse("2025-07-01").plusDays(at) + "," + at + "," + at)
                                .collect(Collectors.joining("\n"))));
        SoilWarmth soil = new SoilWarmth(weather);
        assertThat(soil.on(LocalDate.parse("2025-07-07"))).hasValue(3);
        assertThat(soil.on(LocalDate.parse("2025-08-07"))).isEmpty();
    }

    @Test
    void coverageSaysWhatADateRestsOn() {
        book.on("2025-07-02").did("weather", "min=9C", "max=21C", "rain=4mm");
        Weather weather = weather(Optional.empty(), csv("date,min_c,max_c\n2025-07-01,5,15\n"));
        assertThat(weather.over(LocalDate.parse("2025-07-01"), LocalDate.parse("2025-07-04"))
                        .words())
                .isEqualTo("1 day noted in the book, 1 day CSV file; no rain known on 1 day; 2 days missing, the first"
                        + " 2025-07-03");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "date,min_c,max_c,wind\\n2025-07-01,1,2,3|wind",
                "date,min,max\\n2025-07-01,1,2|there is no such column",
                "date,min_c,max_c\\n2025-07-01,1,2\\n2025-07-01,1,2|line 3",
                "date,min_c,max_c\\n1.7.2025,1,2|this is not a day",
                "date,min_c,max_c\\n2025-07-01,12,2|minimum is above",
                "date,min_c,max_c\\n2025-07-01,a,2|not a number",
                "date,min_c,max_c\\n2025-07-01,50,86|no day on a farm",
                "date,min_c,min_f,max_c\\n2025-07-01,50,86,1|two columns for the same",
                "date,min_c,rain_mm\\n2025-07-01,5,1|one for the maximum",
                "date,min_c,max_c,rain_mm\\n2025-07-01,5,6,-1|no day on a farm"
            })
    void refusesWhatItDoesNotKnowByNameAndLine(String text, String word) {
        assertThatThrownBy(() -> csv(text.replace("\\n", "\n")))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("station.csv, line ")
                .hasMessageContaining(word);
    }

    @Test
    void refusesNormalsWithoutAllMonths() {
        assertThatThrownBy(() -> Normals.read("normals.csv", new StringReader("month,min_c,max_c\n1,0,5\n")))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("month 12 is missing");
    }

    @Test
    void takesNormalsOfTheMeanAlone() {
        Normals normals = Normals.read(
                "normals.csv",
                new StringReader(
                        "month,mean_c\n1,-1\n2,1\n3,5\n4,10\n5,15\n6,19\n7,22\n8,21\n9,17\n10,11\n11,5\n12,1\n"));
        assertThat(on(weather(Optional.of(normals)), "2025-07-15").mean()).isEqualTo(22);
        assertThat(normals.words()).isEqualTo("mean temperature of 12 months, no rain");
    }
}

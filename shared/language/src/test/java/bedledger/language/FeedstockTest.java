package bedledger.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FeedstockTest {
    @ParameterizedTest
    @CsvSource({
        "grass clippings 10kg 77% water 45% C 2.4% N, grass clippings 10 kg 77 % water 45 % C 2.4 % N",
        "dry leaves 2 m3 c:n 54:1 35 % Water, dry leaves 2 m3 35 % water C:N 54",
        "horse manure 1.5short-ton, horse manure 1.5 short-ton",
        "leaves, leaves",
        "water 40L, water 40 L"
    })
    void readsWhatIsSaidInAnyOrderAndWritesItInOne(String typed, String written) {
        assertThat(Feedstock.parse(typed)).hasToString(written);
        assertThat(Feedstock.parse(written)).isEqualTo(Feedstock.parse(typed));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "10kg grass",
                "grass 10kgs",
                "grass 10",
                "grass 10kg 77%",
                "grass 10kg 120% water",
                "grass 10kg 77% water 70% water",
                "grass 45% C 2.4% N C:N 19",
                "grass 90% C 20% N",
                "grass C:N 0",
                "grass 10kg 5kg",
                "grass; leaves",
                "straw 0.5% N 12kg",
                ""
            })
    void refusesWhatItWouldMisread(String typed) {
        assertThatThrownBy(() -> Feedstock.parse(typed)).isInstanceOf(BadValue.class);
    }

    @Test
    void forgetsItsAmountWhenAskedTo() {
        assertThat(Feedstock.parse("straw 10kg 12% water").ofNoAmount()).hasToString("straw 12 % water");
    }
}

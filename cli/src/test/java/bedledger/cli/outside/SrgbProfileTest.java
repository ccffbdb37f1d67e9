package bedledger.cli.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.cli.paper.Paper;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The colour profile in our PDFs against the sRGB (IEC 61966-2-1) that comes with the Java in use, the Little CMS behind both. */
class SrgbProfileTest {
    /** Of the XYZ of white, which is about 1; Java's own profile is rounded otherwise. */
    private static final float CLOSE = 0.002f;

    @ParameterizedTest(name = "red {0}, green {1}, blue {2}")
    @CsvSource({"1,1,1", "0,0,0", "1,0,0", "0,1,0", "0,0,1", "0.02,0.02,0.02", "0.5,0.5,0.5", "0.11,0.26,0.44"})
    void meansTheSameColours(float red, float green, float blue) throws IOException {
        float[] colour = {red, green, blue};
        float[] ours = new ICC_ColorSpace(profile()).toCIEXYZ(colour);
        float[] javas = ColorSpace.getInstance(ColorSpace.CS_sRGB).toCIEXYZ(colour);
        for (int part = 0; part < ours.length; part++) {
            assertThat(ours[part]).isCloseTo(javas[part], within(CLOSE));
        }
    }

    private static ICC_Profile profile() throws IOException {
        try (InputStream in = Objects.requireNonNull(Paper.class.getResourceAsStream("srgb.icc"))) {
            return ICC_Profile.getInstance(in);
        }
    }
}

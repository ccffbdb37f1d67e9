package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.cli.chart.Drawing;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stands together on paper. */
class BlockTest {
    private static final Block KEY = Block.picture(picture(588, ""));
    private static final Block CHART = Block.picture(picture(600, "What went back"));
    private static final Block TABLE_WORDS = Block.text("words before a list");

    @Test
    void wordsAndKeyAreKeptWithTheChartTheyLeadTo() {
        List<Block> blocks = List.of(
                Block.text("intro"), KEY, Block.heading("All beds"), CHART, TABLE_WORDS, Block.points(List.of("one")));
        assertThat(Block.keptTogether(blocks))
                .extracting(Block::kept)
                .containsExactly(true, true, true, false, false, false);
    }

    @Test
    void narrowPicturesStandSideBySideAndAWideOneAlone() {
        Picture narrow = picture(285, "a");
        Picture wide = picture(440, "b");
        assertThat(wide.scrolls()).isTrue();
        assertThat(narrow.scrolls()).isFalse();
        assertThat(Block.pictures(List.of(narrow, narrow, narrow, wide, narrow)).rows())
                .extracting(List::size)
                .containsExactly(2, 1, 1, 1);
    }

    private static Picture picture(int width, String caption) {
        return new Picture(new Blank(width), caption);
    }

    /** A drawing of a width, with nothing on it. */
    private record Blank(int width) implements Drawing {
        @Override
        public String id() {
            return "blank";
        }

        @Override
        public String title() {
            return "Nothing";
        }

        @Override
        public String description() {
            return "Nothing";
        }

        @Override
        public int height() {
            return 100;
        }

        @Override
        public void draw(Graphics2D graphics, Rectangle2D area) {}
    }
}

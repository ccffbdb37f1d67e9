package bedledger.cli.chart;

import bedledger.projections.returned.SourceKind;
import bedledger.projections.trends.Ground;
import bedledger.projections.trends.Source;
import java.awt.Color;

/**
 * One letter and one colour for each kind, neighbours in a stack light and dark by turns.
 *
 * <p>The hues are those of Okabe and Ito for the colour-blind, from memory, lightened or darkened; letters and hatching carry the
 * meaning where colours do not.
 */
public final class Palette {
    public static Swatch of(Source source) {
        Swatch swatch = of(source.kind());
        return source.measured() ? swatch : swatch.with(Swatch.Pattern.HATCHED);
    }

    public static Swatch of(SourceKind kind) {
        return switch (kind) {
            case CROP_SHOOTS -> solid("a", kind, 0x00634a);
            case CROP_ROOTS -> solid("b", kind, 0x5fb79a);
            case COVER_SHOOTS -> solid("c", kind, 0x004c80);
            case COVER_ROOTS -> solid("d", kind, 0x63a9d8);
            case COMPOST -> solid("e", kind, 0x8a3c00);
            case MANURE -> solid("f", kind, 0xd98f00);
            case MATERIAL -> solid("g", kind, 0x7d3c63);
            case MULCH -> solid("h", kind, 0xe6dd8a);
        };
    }

    private static Swatch solid(String letter, SourceKind kind, int rgb) {
        return new Swatch(letter, kind.words(), new Color(rgb), Swatch.Pattern.SOLID);
    }

    public static Swatch of(Ground ground) {
        return switch (ground) {
            case CROP -> ground("c", ground, 0x00634a, Swatch.Pattern.SOLID);
            case COVER_CROP -> ground("v", ground, 0x004c80, Swatch.Pattern.HATCHED);
            case MULCH -> ground("m", ground, 0x8a6d00, Swatch.Pattern.DOTTED);
            case TARP -> ground("t", ground, 0xb9b4aa, Swatch.Pattern.SOLID);
            case BARE -> ground("b", ground, 0xffffff, Swatch.Pattern.EMPTY);
        };
    }

    private static Swatch ground(String letter, Ground ground, int rgb, Swatch.Pattern pattern) {
        return new Swatch(letter, ground.words(), new Color(rgb), pattern);
    }

    private Palette() {}
}

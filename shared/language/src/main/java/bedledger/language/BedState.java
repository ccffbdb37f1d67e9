package bedledger.language;

import java.time.LocalDate;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is known to be in and on a bed at one moment.
 *
 * @param laidOut since when the bed exists; null if it does not
 * @param retired since when it is no longer worked
 * @param crops the crops and cover crops that stand in it
 * @param tarp the tarp that lies on it
 * @param mulches the mulches that lie on it
 * @param drip the drip lines that lie on it
 * @param rowCover the row cover over it
 */
public record BedState(
        @Nullable LocalDate laidOut,
        @Nullable LocalDate retired,
        @Nullable FieldId field,
        @Nullable Length length,
        @Nullable Length width,
        @Nullable String called,
        List<Stand> crops,
        @Nullable Laid tarp,
        List<Laid> mulches,
        @Nullable Laid drip,
        @Nullable Laid rowCover) {
    public static final BedState UNKNOWN =
            new BedState(null, null, null, null, null, null, List.of(), null, List.of(), null, null);

    /** A crop in the bed. {@code entry} is the number of the entry that put it there, {@code clear} whether staking keeps it off the soil. */
    public record Stand(CropName crop, boolean cover, LocalDate since, long entry, boolean clear) {}

    /** A thing on the bed, what it is made of, since when, and the entry that laid it. */
    public record Laid(
            String what,
            LocalDate since,
            long entry,
            @Nullable MulchKind mulch) {}

    /** The area of the bed top in m²; 0 while unknown. */
    public double squareMetres() {
        return length == null || width == null ? 0 : length.metres() * width.metres();
    }

    public boolean grows(CropName crop) {
        return crops.stream().anyMatch(stand -> !stand.cover() && stand.crop().equals(crop));
    }

    public boolean hasCover() {
        return crops.stream().anyMatch(Stand::cover);
    }

    BedState outline(LocalDate since, FieldId in, Length newLength, Length newWidth) {
        return new BedState(since, retired, in, newLength, newWidth, called, crops, tarp, mulches, drip, rowCover);
    }

    BedState length(Length part) {
        return new BedState(laidOut, retired, field, part, width, called, crops, tarp, mulches, drip, rowCover);
    }

    BedState retired(LocalDate day) {
        return new BedState(laidOut, day, field, length, width, called, crops, tarp, mulches, drip, rowCover);
    }

    BedState called(String name) {
        return new BedState(laidOut, retired, field, length, width, name, crops, tarp, mulches, drip, rowCover);
    }

    BedState tarp(@Nullable Laid laid) {
        return new BedState(laidOut, retired, field, length, width, called, crops, laid, mulches, drip, rowCover);
    }

    BedState drip(@Nullable Laid laid) {
        return new BedState(laidOut, retired, field, length, width, called, crops, tarp, mulches, laid, rowCover);
    }

    BedState rowCover(@Nullable Laid laid) {
        return new BedState(laidOut, retired, field, length, width, called, crops, tarp, mulches, drip, laid);
    }

    BedState mulches(List<Laid> laid) {
        return new BedState(laidOut, retired, field, length, width, called, crops, tarp, laid, drip, rowCover);
    }

    BedState crops(List<Stand> standing) {
        return new BedState(laidOut, retired, field, length, width, called, standing, tarp, mulches, drip, rowCover);
    }

    BedState with(Stand stand) {
        boolean there = crops.stream().anyMatch(s -> s.crop().equals(stand.crop()) && s.cover() == stand.cover());
        return there
                ? this
                : crops(Stream.concat(crops.stream(), Stream.of(stand)).toList());
    }

    BedState without(CropName crop) {
        return crops(
                crops.stream().filter(s -> s.cover() || !s.crop().equals(crop)).toList());
    }

    BedState staked(CropName crop, boolean clear) {
        UnaryOperator<Stand> stake =
                s -> s.crop().equals(crop) && !s.cover() ? new Stand(s.crop(), false, s.since(), s.entry(), clear) : s;
        return crops(crops.stream().map(stake).toList());
    }

    BedState withoutCover() {
        return crops(crops.stream().filter(s -> !s.cover()).toList());
    }

    BedState bare() {
        return new BedState(laidOut, retired, field, length, width, called, List.of(), null, List.of(), null, null);
    }
}

package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.history.Cropping;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What leaves a bed if residue is hauled off: a crop's shoots or roots as recorded, as supposed, and the difference.
 *
 * <p>The two share their coefficients, and so does their difference: what is doubtful in both is not doubted twice.
 *
 * @param missing why a figure cannot be given
 */
public record Leaving(
        BedId bed,
        String crop,
        LocalDate ended,
        SourceKind kind,
        Matter recorded,
        Matter supposed,
        Matter leaves,
        List<String> missing) {
    private static final String METHOD = "as recorded, less as supposed";

    public Leaving {
        missing = List.copyOf(missing);
    }

    /** One for the shoots and one for the roots of each cropping whose residue is supposed to be hauled off. */
    public static List<Leaving> of(Supposing supposing, Returned recorded, Returned supposed) {
        List<Leaving> all = new ArrayList<>();
        for (Supposing.HauledOff haul : supposing.hauls()) {
            Cropping cropping = haul.cropping();
            recorded.pieces().stream()
                    .filter(piece -> isOf(piece, cropping))
                    .forEach(piece -> supposed.pieces().stream()
                            .filter(other -> other.kind() == piece.kind() && isOf(other, cropping))
                            .findFirst()
                            .ifPresent(other -> all.add(of(cropping.bed(), piece, other))));
        }
        return List.copyOf(all);
    }

    private static boolean isOf(Return piece, Cropping cropping) {
        boolean grown = piece.kind().isShoots() || piece.kind().isRoots();
        return grown
                && piece.entries().contains(cropping.planted())
                && piece.beds().stream().anyMatch(share -> share.bed().equals(cropping.bed()))
                && Optional.of(piece.day()).equals(cropping.ended());
    }

    private static Leaving of(BedId bed, Return recorded, Return supposed) {
        Matter before = recorded.on(bed);
        Matter after = supposed.on(bed);
        Matter leaves = new Matter(
                less(before.fresh(), after.fresh()),
                less(before.dry(), after.dry()),
                less(before.carbon(), after.carbon()),
                less(before.nitrogen(), after.nitrogen()),
                less(before.phosphorus(), after.phosphorus()),
                before.carbonToNitrogen());
        return new Leaving(
                bed, recorded.what(), recorded.day(), recorded.kind(), before, after, leaves, recorded.missing());
    }

    private static Optional<Estimate> less(Optional<Estimate> recorded, Optional<Estimate> supposed) {
        return recorded.flatMap(
                one -> supposed.map(two -> one.minus(two).clippedAtZero().by(METHOD)));
    }
}

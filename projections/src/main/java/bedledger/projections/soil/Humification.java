package bedledger.projections.soil;

import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.SourceKind;
import bedledger.projections.tables.Parameters;
import java.util.Optional;

/** Which share of what went back becomes humus, by each balance's own book; empty where a book has no row for the source. */
final class Humification {
    private static final String SHARE = "humified share";

    private final Parameters balances;
    private final Parameters shares = Parameters.of("humified-share");

    Humification(Parameters balances) {
        this.balances = balances;
    }

    /** AMGv2: kg C per kg C. */
    Optional<Estimate> amg(Return piece) {
        if (piece.kind().isRoots()) {
            return shares.find("roots", SHARE).map(Derived::of);
        }
        return shares.find(piece.what(), SHARE)
                .or(() -> piece.kind().isShoots() ? shares.find("other shoots", SHARE) : Optional.empty())
                .map(Derived::of);
    }

    /** ICBM: kg C per kg C. */
    Optional<Estimate> icbm(Return piece) {
        return set(piece.kind(), "plants", "plants", "manure", "plants")
                .map(name -> Derived.of(balances.get("ICBM humified share", name)));
    }

    /** Hénin and Dupuis: kg humus per kg dry. */
    Optional<Estimate> henin(Return piece) {
        if (piece.kind() == SourceKind.MULCH && !piece.what().equals("straw")) {
            return Optional.empty();
        }
        return set(piece.kind(), "vegetable leaves", "green manure", "fresh manure", "straw")
                .map(name -> Derived.of(balances.get("Henin-Dupuis isohumic", name)));
    }

    private static Optional<String> set(SourceKind kind, String crop, String cover, String manure, String mulch) {
        return switch (kind) {
            case CROP_SHOOTS -> Optional.of(crop);
            case COVER_SHOOTS -> Optional.of(cover);
            case CROP_ROOTS, COVER_ROOTS -> Optional.of("roots");
            case COMPOST -> Optional.of("compost");
            case MANURE -> Optional.of(manure);
            case MULCH -> Optional.of(mulch);
            case MATERIAL -> Optional.empty();
        };
    }
}

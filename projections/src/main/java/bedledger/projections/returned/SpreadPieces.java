package bedledger.projections.returned;

import bedledger.language.Amount;
import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Fertility.Spread;
import bedledger.language.MaterialName;
import bedledger.language.Stock.MaterialListed;
import bedledger.projections.history.BedAreas;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Compost, manure and listed materials, one piece for each spreading. */
final class SpreadPieces {
    private final Basis basis;
    private final Map<MaterialName, List<Entry>> listings;

    SpreadPieces(Basis basis) {
        this.basis = basis;
        this.listings = basis.farm.ofKind(MaterialListed.class).stream()
                .collect(Collectors.groupingBy(entry -> ((MaterialListed) entry.fact()).material()));
    }

    List<Return> pieces() {
        return basis.done(Spread.class).stream()
                .flatMap(entry -> piece(entry, (Spread) entry.fact()).stream())
                .toList();
    }

    private Optional<Return> piece(Entry entry, Spread spread) {
        List<BedId> beds = BedAreas.beds(entry).stream()
                .filter(bed -> basis.fits(bed, entry))
                .toList();
        if (beds.isEmpty()) {
            return Optional.empty();
        }
        Spreading spreading = new Spreading(basis, entry, beds, spread.perBed() != null);
        Amount amount = spread.perBed() == null ? spread.quantity() : spread.perBed();
        Content content = Content.recorded(spread.moisture(), spread.nitrogen(), spread.phosphorus());
        if (spread.material() != null) {
            return Optional.of(spreading.piece(
                    SourceKind.MATERIAL,
                    spread.material().name(),
                    amount,
                    content.or(listing(spread.material(), entry, spreading.working()))));
        }
        if (spread.manure() != null) {
            return Optional.of(spreading.piece(SourceKind.MANURE, manure(spread.manure()), amount, content));
        }
        spreading
                .working()
                .remark("from pile " + spread.pile()
                        + "; what farm compost is made of is unknown until it is analysed, "
                        + "and where it was not recorded, a published compost stands in");
        return Optional.of(spreading.piece(SourceKind.COMPOST, "compost", amount, content));
    }

    private String manure(String animal) {
        return basis.tables.material(animal + " manure").isPresent() ? animal + " manure" : animal;
    }

    /** The listing in force on the day of spreading, else the first after it. */
    private Content listing(MaterialName material, Entry spread, Working working) {
        List<Entry> all = listings.getOrDefault(material, List.of());
        Optional<Entry> before = all.stream()
                .filter(entry -> !entry.head().doneOn().isAfter(spread.head().doneOn()))
                .reduce((earlier, later) -> later);
        Optional<Entry> listing = before.or(() -> all.stream().findFirst());
        listing.ifPresentOrElse(working::behind, () -> working.remark(material + " is not listed"));
        return listing.map(entry -> Content.listed((MaterialListed) entry.fact()))
                .orElse(Content.UNKNOWN);
    }
}

package bedledger.cli.write;

import bedledger.domain.Book;
import bedledger.domain.Draft;
import bedledger.language.BedId;
import bedledger.language.BookKeeping;
import bedledger.language.CropName;
import bedledger.language.FieldId;
import bedledger.language.Land;
import bedledger.language.LotId;
import bedledger.language.NaturalOrder;
import bedledger.language.Place;
import bedledger.language.Problem;
import bedledger.projections.findings.Reading;
import bedledger.projections.tables.Crop;
import bedledger.projections.tables.Tables;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The names a book knows, and those that the drafts read so far bring in. */
public final class Known {
    private final Book book;
    private @Nullable Tables tables;
    private final Map<String, Set<String>> names = new HashMap<>();
    private final Set<String> addedCrops = new LinkedHashSet<>();
    private final Map<FieldId, List<BedId>> drafted = new HashMap<>();
    private boolean cropsLoaded;

    Known(Book book) {
        this.book = book;
    }

    /** The tables, read only when an act names a crop or a material: they cost a cold start some 50 ms. */
    Tables tables() {
        if (tables == null) {
            tables = Tables.bundled();
        }
        return tables;
    }

    /** The names of one kind of place: {@code bed}, {@code field}, {@code pile}, {@code lot}, {@code seedLot}, {@code tray}, {@code material}, {@code sample}. */
    Set<String> names(String kind) {
        return names.computeIfAbsent(kind, k -> {
            Set<String> found = new LinkedHashSet<>();
            book.placeKeys(k + ":").forEach(key -> found.add(key.substring(k.length() + 1)));
            return found;
        });
    }

    /** The known spelling of a name, if it is known in any case of letters. */
    Optional<String> spelling(String kind, String typed) {
        return names(kind).contains(typed)
                ? Optional.of(typed)
                : names(kind).stream()
                        .filter(name -> name.equalsIgnoreCase(typed))
                        .findFirst();
    }

    Optional<CropName> crop(String typed) {
        Optional<CropName> tabled = tables().crop(typed).map(Crop::name).map(CropName::new);
        return tabled.or(() -> crops().stream()
                .filter(name -> name.equalsIgnoreCase(typed.strip()))
                .findFirst()
                .map(CropName::new));
    }

    /** A reading that no rule book has would be written and never count. */
    static List<Problem> faults(BookKeeping.ReadingChosen chosen) {
        return Reading.parse(chosen.reading()).isPresent()
                ? List.of()
                : List.of(new Problem(
                        "reading",
                        chosen.reading(),
                        "no rule book has such a reading",
                        "write one of: "
                                + Arrays.stream(Reading.values())
                                        .map(Reading::word)
                                        .collect(Collectors.joining(", "))));
    }

    List<Problem> faults(BookKeeping.OwnValueNoted noted) {
        return new OwnValues(tables(), this).faults(noted);
    }

    private Set<String> crops() {
        if (!cropsLoaded) {
            cropsLoaded = true;
            book.ofKind(BookKeeping.CropAdded.class)
                    .forEach(entry -> addedCrops.add(
                            ((BookKeeping.CropAdded) entry.fact()).crop().name()));
        }
        return addedCrops;
    }

    List<String> nearestCrops(String typed) {
        return Stream.concat(
                        tables().nearestCrops(typed).stream(),
                        bedledger.language.Words.nearest(typed, List.copyOf(crops())).stream())
                .toList();
    }

    List<BedId> bedsOf(FieldId field) {
        List<BedId> beds = new ArrayList<>(drafted.getOrDefault(field, List.of()));
        book.farm(List.of(field)).ofKind(Land.BedLaidOut.class).stream()
                .map(entry -> (Land.BedLaidOut) entry.fact())
                .filter(laid -> laid.field().equals(field))
                .forEach(laid -> beds.addAll(laid.beds()));
        return beds.stream()
                .distinct()
                .sorted(Comparator.comparing(BedId::name, NaturalOrder.INSTANCE))
                .toList();
    }

    /** Beds that were given this other name. */
    List<BedId> called(String typed) {
        return book.ofKind(Land.BedRenamed.class).stream()
                .map(entry -> (Land.BedRenamed) entry.fact())
                .filter(renamed -> renamed.called().equalsIgnoreCase(typed))
                .map(Land.BedRenamed::bed)
                .distinct()
                .toList();
    }

    boolean hasLot(LotId lot) {
        return names("lot").contains(lot.toString());
    }

    /** Learns the names that a draft brings in, for the drafts read after it. */
    public void learn(Draft draft) {
        for (Place place : draft.fact().places()) {
            String key = place.key();
            names(key.substring(0, key.indexOf(':'))).add(place.toString());
        }
        if (draft.fact() instanceof BookKeeping.CropAdded added) {
            crops().add(added.crop().name());
        }
        if (draft.fact() instanceof Land.BedLaidOut laid) {
            drafted.computeIfAbsent(laid.field(), f -> new ArrayList<>()).addAll(laid.beds());
        }
    }
}

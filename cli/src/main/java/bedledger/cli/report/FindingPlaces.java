package bedledger.cli.report;

import bedledger.language.BedId;
import bedledger.language.FieldId;
import bedledger.language.LotId;
import bedledger.language.MaterialName;
import bedledger.language.NaturalOrder;
import bedledger.language.PileId;
import bedledger.language.Place;
import bedledger.language.SampleId;
import bedledger.language.SeedLotId;
import bedledger.language.TrayId;
import bedledger.projections.findings.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What is not met, incomplete or to be asked, place by place; each finding once, at the place where it would be settled. */
final class FindingPlaces implements Iterable<FindingPlaces.Group> {
    /** The findings about no place in particular. */
    private static final String FARM = "The farm as a whole";

    private final Links links;
    private final Map<Key, List<FindingLine>> groups = new TreeMap<>();

    FindingPlaces(Links links, FindingLines lines) {
        this.links = links;
        lines.all().stream()
                .filter(line -> !line.isMet())
                .forEach(line -> groups.computeIfAbsent(key(line.finding()), key -> new ArrayList<>())
                        .add(line));
    }

    private record Key(int rank, String title, Phrase name) implements Comparable<Key> {
        private static final Comparator<Key> ORDER =
                Comparator.comparingInt(Key::rank).thenComparing(Key::title, NaturalOrder.INSTANCE);

        @Override
        public int compareTo(Key other) {
            return ORDER.compare(this, other);
        }
    }

    /** One place, and its open findings, the worst first. */
    record Group(Phrase name, Iterable<FullFinding> findings) {}

    /** A pile's, a seed lot's or a field's findings stand with it, not with the many beds they bear on. */
    private Key key(Finding finding) {
        return Stream.<Place>concat(finding.places().stream(), finding.lots().stream())
                .min(Comparator.comparing((Place place) -> place instanceof LotId)
                        .thenComparing(place -> place instanceof BedId))
                .map(this::key)
                .orElseGet(() -> new Key(0, FARM, Phrase.of(FARM)));
    }

    private Key key(Place place) {
        String kind = kind(place);
        return new Key(rank(place), kind + place, Phrase.of(kind).plus(links.place(place)));
    }

    private static int rank(Place place) {
        List<Class<? extends Place>> order = List.of(
                FieldId.class,
                BedId.class,
                SeedLotId.class,
                TrayId.class,
                MaterialName.class,
                PileId.class,
                SampleId.class,
                LotId.class);
        return 1 + order.indexOf(place.getClass());
    }

    private static String kind(Place place) {
        if (place instanceof FieldId) {
            return "Field ";
        }
        if (place instanceof BedId) {
            return "Bed ";
        }
        if (place instanceof SeedLotId) {
            return "Seed lot ";
        }
        if (place instanceof TrayId) {
            return "Trays ";
        }
        if (place instanceof PileId) {
            return "Compost pile ";
        }
        return place instanceof LotId ? "Lot " : place instanceof SampleId ? "Sample " : "Material ";
    }

    @Override
    public Iterator<Group> iterator() {
        return groups.entrySet().stream()
                .map(group -> group(group.getKey(), group.getValue()))
                .iterator();
    }

    private Group group(Key key, List<FindingLine> lines) {
        List<FindingLine> worstFirst = lines.stream()
                .sorted(Comparator.comparing(
                                (FindingLine line) -> line.finding().outcome())
                        .reversed())
                .toList();
        return new Group(
                key.name(),
                () -> worstFirst.stream()
                        .map(line -> FullFinding.of(links, line))
                        .iterator());
    }
}

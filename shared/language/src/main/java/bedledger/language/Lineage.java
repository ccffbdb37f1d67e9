package bedledger.language;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Which lots were made of which, by joining and splitting; total, also where entries make a ring of them. */
public final class Lineage {
    /** So much of one lot went into another. */
    public record Link(Entry entry, LotId from, LotId into, Amount amount) {}

    private final Map<LotId, List<Link>> parents = new LinkedHashMap<>();
    private final Map<LotId, List<Link>> children = new LinkedHashMap<>();
    private final Map<LotId, Entry> openings = new LinkedHashMap<>();

    private Lineage() {}

    /** By the end of a day; a join or a split that does not fit a new lot, because that name was taken, adds nothing to it. */
    public static Lineage of(Farm farm, LocalDate day) {
        Lineage lineage = new Lineage();
        for (LotId lot : farm.lots()) {
            Entry opening = farm.lot(lot).on(day).opening();
            if (opening != null) {
                lineage.openings.put(lot, opening);
                lineage.links(lot, opening).forEach(lineage::add);
            }
        }
        return lineage;
    }

    private List<Link> links(LotId lot, Entry opening) {
        if (opening.fact() instanceof Harvesting.LotsJoined joined) {
            return joined.lots().stream()
                    .map(part -> new Link(opening, part.lot(), lot, part.quantity()))
                    .toList();
        }
        return opening.fact() instanceof Harvesting.LotSplit split
                ? split.into().stream()
                        .filter(part -> part.lot().equals(lot))
                        .map(part -> new Link(opening, split.lot(), lot, part.quantity()))
                        .toList()
                : List.of();
    }

    private void add(Link link) {
        parents.computeIfAbsent(link.into(), lot -> new ArrayList<>()).add(link);
        children.computeIfAbsent(link.from(), lot -> new ArrayList<>()).add(link);
    }

    /** What a lot was joined of or split from; empty for a harvest. */
    public List<Link> parents(LotId lot) {
        return List.copyOf(parents.getOrDefault(lot, List.of()));
    }

    /** The lots that part of it went into. */
    public List<Link> children(LotId lot) {
        return List.copyOf(children.getOrDefault(lot, List.of()));
    }

    /** Every lot it is made of, itself first. */
    public Set<LotId> sources(LotId lot) {
        return reach(lot, one -> parents(one).stream().map(Link::from).toList());
    }

    /** Every lot that has some of it, itself first. */
    public Set<LotId> madeOf(LotId lot) {
        return reach(lot, one -> children(one).stream().map(Link::into).toList());
    }

    /** The lots it goes back to that were harvested, or found in store. */
    public List<LotId> origins(LotId lot) {
        return sources(lot).stream().filter(one -> parents(one).isEmpty()).toList();
    }

    /** The crop of a lot; empty where it was joined of several crops, or where nothing on record began it. */
    public Optional<CropName> crop(LotId lot) {
        List<Optional<CropName>> crops =
                origins(lot).stream().map(this::ownCrop).distinct().toList();
        return crops.size() == 1 ? crops.get(0) : Optional.empty();
    }

    private Optional<CropName> ownCrop(LotId lot) {
        Entry opening = openings.get(lot);
        if (opening == null) {
            return Optional.empty();
        }
        return opening.fact() instanceof Harvesting.Harvested harvested
                ? Optional.of(harvested.crop())
                : opening.fact() instanceof Harvesting.LotFound found ? Optional.of(found.crop()) : Optional.empty();
    }

    private static Set<LotId> reach(LotId lot, Function<LotId, List<LotId>> next) {
        Set<LotId> reached = new LinkedHashSet<>();
        Deque<LotId> open = new ArrayDeque<>(List.of(lot));
        while (!open.isEmpty()) {
            LotId one = open.removeFirst();
            if (reached.add(one)) {
                open.addAll(next.apply(one));
            }
        }
        return reached;
    }
}

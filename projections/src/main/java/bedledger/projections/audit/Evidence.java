package bedledger.projections.audit;

import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Lineage;
import bedledger.language.LotAccount;
import bedledger.language.LotId;
import bedledger.language.Place;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Findings;
import bedledger.projections.findings.Outcome;
import bedledger.projections.gaps.Gap;
import bedledger.projections.gaps.Gaps;
import bedledger.projections.trace.Graph;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The record that is asked, by the end of a day, with what the other projections say of it, each made once. */
final class Evidence {
    private final Farm farm;
    private final LocalDate from;
    private final LocalDate day;
    private final LocalDate begins;
    private final Graph graph;
    private final Gaps gaps;
    private final Lineage lineage;
    private final Map<String, ChainLink> links;
    private final Map<LotId, List<Finding>> byLot = new HashMap<>();
    private final Map<String, List<Finding>> byPlace = new HashMap<>();
    private final Map<String, LotId> lots = new LinkedHashMap<>();
    private final Map<LotId, LotAccount> accounts = new HashMap<>();

    Evidence(Farm farm, LocalDate from, LocalDate day, String book, Findings findings) {
        this.farm = farm;
        this.from = from;
        this.day = day;
        this.begins = farm.inForce().stream()
                .map(entry -> entry.head().doneOn())
                .min(Comparator.naturalOrder())
                .orElse(day);
        this.graph = Graph.of(farm, day);
        this.gaps = Gaps.of(farm, from, day);
        this.lineage = Lineage.of(farm, day);
        this.links = ChainLink.ofRules(book);
        farm.lots().forEach(lot -> lots.put(lot.key(), lot));
        for (Finding finding : findings.all()) {
            finding.lots()
                    .forEach(lot ->
                            byLot.computeIfAbsent(lot, l -> new ArrayList<>()).add(finding));
            finding.places()
                    .forEach(place -> byPlace.computeIfAbsent(place.key(), p -> new ArrayList<>())
                            .add(finding));
        }
    }

    Farm farm() {
        return farm;
    }

    LocalDate from() {
        return from;
    }

    LocalDate day() {
        return day;
    }

    /** The first day of which the book tells anything at all. */
    LocalDate begins() {
        return begins;
    }

    Graph graph() {
        return graph;
    }

    List<Gap> gaps() {
        return gaps.all();
    }

    Lineage lineage() {
        return lineage;
    }

    Optional<LotId> lot(String node) {
        return Optional.ofNullable(lots.get(node));
    }

    Collection<LotId> lots() {
        return lots.values();
    }

    LotAccount account(LotId lot) {
        return accounts.computeIfAbsent(lot, one -> LotAccount.of(farm, one, day));
    }

    boolean oversold(LotId lot) {
        return account(lot).left().filter(left -> left.number().signum() < 0).isPresent();
    }

    /** The facts in force of one kind that were done in the time asked about. */
    <F extends Fact> List<Entry> within(Class<F> kind) {
        return farm.ofKind(kind).stream().filter(this::isWithin).toList();
    }

    boolean isWithin(Entry entry) {
        return !entry.head().doneOn().isBefore(from) && !entry.head().doneOn().isAfter(day);
    }

    /** What is not met of these lots, each finding once, the worst first. */
    List<Finding> open(Collection<LotId> some) {
        Set<Finding> open = new LinkedHashSet<>();
        some.forEach(lot -> open.addAll(byLot.getOrDefault(lot, List.of())));
        return worstFirst(open);
    }

    /** What is not met and names this place, by its key, but no lot. */
    List<Finding> withoutLots(String place) {
        return worstFirst(byPlace.getOrDefault(place, List.of())).stream()
                .filter(finding -> finding.lots().isEmpty())
                .toList();
    }

    /** What is not met and names this place. */
    List<Finding> naming(Place place) {
        return worstFirst(byPlace.getOrDefault(place.key(), List.of()));
    }

    private static List<Finding> worstFirst(Collection<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.outcome() != Outcome.MET)
                .sorted(Comparator.comparing(Finding::outcome).reversed())
                .toList();
    }

    /** The link a finding is told with. */
    ChainLink link(Finding finding) {
        return links.getOrDefault(finding.rule(), ChainLink.LOT);
    }
}

package bedledger.projections.due;

import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.Lineage;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import bedledger.language.Planting;
import bedledger.language.Selling;
import bedledger.language.SoldAs;
import bedledger.projections.findings.Doubt;
import bedledger.projections.findings.Eligibility;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Findings;
import bedledger.projections.findings.MayI;
import bedledger.projections.findings.Outcome;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is to be said of an act while something can still be done about it: sentences, never a reason to refuse.
 *
 * <p>The record asked is the one before the act.
 */
public final class Beforehand {
    /** A lot that many rules speak against is told the worst; the rest is in the findings. */
    private static final int TOLD = 2;

    /** Whether anything could be said of such an act, so that others cost nothing. */
    public static boolean concerns(Fact fact) {
        return ofBeds(fact) || ofLots(fact);
    }

    /** Whether it is asked of beds: what touches them, their fields, piles and materials is enough to answer. */
    public static boolean ofBeds(Fact fact) {
        return fact instanceof Planting.Sown
                || fact instanceof Planting.Transplanted
                || fact instanceof Harvesting.Harvested;
    }

    /** Whether it is asked of lots sold as organic, for which the whole record speaks. */
    public static boolean ofLots(Fact fact) {
        return fact instanceof Selling.Sold sold && sold.as() == SoldAs.ORGANIC;
    }

    /**
     * The sentences.
     *
     * @param may the record before the act, asked on the day of the act
     */
    public static List<String> says(MayI may, Entry act) {
        if (act.fact() instanceof Planting.Sown sown) {
            return planting(may, sown.beds(), sown.crop());
        }
        if (act.fact() instanceof Planting.Transplanted set) {
            return planting(may, set.beds(), set.crop());
        }
        if (act.fact() instanceof Harvesting.Harvested harvest) {
            return picking(may, act, harvest);
        }
        return act.fact() instanceof Selling.Sold sold && ofLots(sold) ? selling(may, sold) : List.of();
    }

    /**
     * What is to be said of many acts at once, from one judgement of the whole record: of sowings, plantings and picks what is not met or
     * to ask, the worst first; then of the lots sold as organic, as it is said of one sale.
     *
     * @param may the record with the acts, asked on the day they are written
     */
    public static List<String> ofMany(MayI may, List<Entry> acts) {
        Findings findings = Findings.of(may.farm(), may.book(), may.settings(), may.facts(), may.day());
        Set<Long> onBeds = acts.stream()
                .filter(act -> ofBeds(act.fact()))
                .map(Entry::number)
                .collect(Collectors.toSet());
        List<String> says = new ArrayList<>(findings.all().stream()
                .filter(finding -> finding.outcome() == Outcome.NOT_MET || finding.outcome() == Outcome.ASK)
                .filter(finding -> finding.entries().stream().anyMatch(onBeds::contains))
                .sorted(Comparator.comparing(Finding::outcome).reversed())
                .map(finding -> Asked.capital(finding.outcome().words()) + ": " + words(finding))
                .toList());
        List<LotAmount> sold = acts.stream()
                .map(Entry::fact)
                .filter(Beforehand::ofLots)
                .flatMap(fact -> ((Selling.Sold) fact).lots().stream())
                .toList();
        says.addAll(selling(may, findings, sold));
        return says;
    }

    private static List<String> planting(MayI may, List<BedId> beds, CropName crop) {
        List<String> says = new ArrayList<>(Intervals.said(may, beds, crop));
        beds.stream()
                .flatMap(bed -> may.plant(bed, crop).doubts().stream())
                .map(Beforehand::words)
                .distinct()
                .forEach(says::add);
        return says;
    }

    private static String words(Doubt doubt) {
        return Asked.capital(doubt.outcome().words()) + ": " + doubt.why() + behind(doubt.entries(), doubt.citation());
    }

    private static String behind(List<Long> entries, String citation) {
        String numbers = PickWords.numbers(entries);
        return " [" + numbers + (numbers.isEmpty() ? "" : "; ") + citation + "]";
    }

    private static List<String> picking(MayI may, Entry act, Harvesting.Harvested harvest) {
        // An hour that is not known is taken as the latest of its day: only what is certain is said.
        LocalTime known = act.head().time();
        LocalTime time = known == null ? LocalTime.MAX : known;
        Asked asked = new Asked(may, may.day().atTime(time), may.day(), Asked.TarpWeeks.USUAL);
        List<String> says = new ArrayList<>(Intervals.said(may, harvest.beds(), harvest.crop()));
        Stream.concat(KeepOuts.of(asked), LabelDays.of(asked))
                .filter(item -> harvest.beds().stream().anyMatch(item.places()::contains))
                .map(item -> Asked.capital(item.says()) + "." + behind(item.entries(), item.basis()))
                .forEach(says::add);
        return says;
    }

    private static List<String> selling(MayI may, Selling.Sold sold) {
        Findings findings = Findings.of(may.farm(), may.book(), may.settings(), may.facts(), may.day());
        return selling(may, findings, sold.lots());
    }

    private static List<String> selling(MayI may, Findings findings, List<LotAmount> sold) {
        Lineage lineage = Lineage.of(may.farm(), may.day());
        Map<LotId, List<Finding>> byLot = new HashMap<>();
        for (Finding finding : findings.all()) {
            finding.lots()
                    .forEach(lot ->
                            byLot.computeIfAbsent(lot, l -> new ArrayList<>()).add(finding));
        }
        Map<List<Object>, List<Eligibility>> alike = sold.stream()
                .map(LotAmount::lot)
                .distinct()
                .map(lot -> Eligibility.of(lot, lineage, of(lineage, lot, byLot)))
                .collect(Collectors.groupingBy(
                        lot -> List.of(lot.worst(), open(lot)), LinkedHashMap::new, Collectors.toList()));
        return alike.values().stream().flatMap(Beforehand::selling).toList();
    }

    /** The findings of a lot and of the lots it goes back to: all that its judgement looks at. */
    private static Findings of(Lineage lineage, LotId lot, Map<LotId, List<Finding>> byLot) {
        Set<Finding> of = new LinkedHashSet<>(byLot.getOrDefault(lot, List.of()));
        lineage.origins(lot).forEach(origin -> of.addAll(byLot.getOrDefault(origin, List.of())));
        return new Findings(List.copyOf(of));
    }

    private static List<Finding> open(Eligibility lot) {
        return lot.reasons().stream()
                .filter(finding -> finding.outcome() != Outcome.MET)
                .toList();
    }

    /** Of lots of which the same is to be said. */
    private static Stream<String> selling(List<Eligibility> alike) {
        Outcome worst = alike.get(0).worst();
        String as = (alike.size() == 1 ? "Lot " : "Lots ")
                + Asked.list(alike.stream().map(Eligibility::lot).toList()) + " as organic: " + worst;
        if (worst == Outcome.MET) {
            return Stream.of(as + ", by the rules this program holds; the certifier has the last word.");
        }
        List<Finding> open = open(alike.get(0));
        List<Finding> told = open.stream()
                .filter(finding -> finding.outcome() == worst)
                .limit(TOLD)
                .toList();
        int more = open.size() - told.size();
        String nothing = told.isEmpty() ? "; not all of it is known back to the bed it grew in." : ".";
        return Stream.of(
                        Stream.of(as + nothing),
                        told.stream().map(Beforehand::words),
                        Stream.of(more + " more not met, incomplete or to ask: bedledger check")
                                .filter(line -> more > 0))
                .flatMap(lines -> lines);
    }

    private static String words(Finding finding) {
        return finding.sentence()
                + behind(finding.entries(), finding.citation())
                + (finding.settles().isEmpty() ? "" : " " + finding.settles());
    }

    private Beforehand() {}
}

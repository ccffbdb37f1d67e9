package bedledger.projections.audit;

import bedledger.language.CropName;
import bedledger.language.Dimension;
import bedledger.language.Entry;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import bedledger.language.MaterialName;
import bedledger.language.Selling;
import bedledger.language.SoldAs;
import bedledger.language.Stock;
import bedledger.language.Words;
import bedledger.projections.audit.Thing.Kind;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Outcome;
import bedledger.projections.trace.Graph;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Sales of the time asked about, and lots begun in it that nobody bought, each with what makes an inspector look. */
final class SaleRisks {
    /** Below so many sales of a crop, the largest says nothing. */
    private static final int FEW = 3;

    private final Evidence evidence;
    private final Weights weights = Weights.of("trace");
    private final CropSales sales;
    private final List<Entry> returns;

    SaleRisks(Evidence evidence) {
        this.evidence = evidence;
        this.sales = CropSales.of(evidence);
        this.returns = evidence.farm().ofKind(Selling.CustomerReturned.class).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(evidence.day()))
                .toList();
    }

    List<Candidate> all() {
        Map<String, List<Entry>> invoices = new LinkedHashMap<>();
        for (Entry entry : evidence.within(Selling.Sold.class)) {
            invoices.computeIfAbsent(Graph.sale(entry), id -> new ArrayList<>()).add(entry);
        }
        Map<CropName, String> largest = largest(invoices);
        List<Candidate> all = new ArrayList<>();
        invoices.forEach((id, entries) -> all.add(sale(id, entries, largest)));
        evidence.lots().stream().filter(this::isKept).forEach(lot -> all.add(kept(lot)));
        return all;
    }

    private Candidate sale(String id, List<Entry> entries, Map<CropName, String> largest) {
        Set<LotId> lots = new LinkedHashSet<>();
        entries.forEach(entry -> sold(entry).lots().forEach(part -> lots.add(part.lot())));
        List<Long> numbers = numbers(entries);
        boolean organic = entries.stream().anyMatch(entry -> sold(entry).as() == SoldAs.ORGANIC);
        List<Reason> reasons = new ArrayList<>();
        reasons.add(weights.reason("start", "a sale of the time asked about", numbers));
        if (organic) {
            outcome(lots, reasons);
        }
        ofLots(lots, reasons);
        if (entries.stream()
                .anyMatch(entry -> sold(entry).invoice() == null || sold(entry).buyer() == null)) {
            reasons.add(weights.reason("no-papers", "invoice or buyer is not recorded", numbers));
        }
        back(lots, sold(entries.get(0)).invoice(), reasons);
        lots.stream()
                .flatMap(lot -> evidence.lineage().crop(lot).stream())
                .distinct()
                .filter(crop -> id.equals(largest.get(crop)))
                .forEach(crop -> reasons.add(
                        weights.reason("largest", "the most " + crop + " by weight on one invoice", numbers)));
        corrected(entries, lots, reasons);
        return new Candidate(thing(id, entries), reasons);
    }

    private Candidate kept(LotId lot) {
        List<Entry> opening = evidence.account(lot).opening().stream().toList();
        List<Reason> reasons = new ArrayList<>();
        reasons.add(weights.reason("start", "a lot that is on no invoice", numbers(opening)));
        ofLots(Set.of(lot), reasons);
        corrected(List.of(), Set.of(lot), reasons);
        return new Candidate(new Thing(Kind.LOT, "lot " + lot, "lot " + lot, lot.key()), reasons);
    }

    /** Whether it was begun in the time asked about, and neither it nor what was made of it is on an invoice. */
    private boolean isKept(LotId lot) {
        return evidence.account(lot).opening().filter(evidence::isWithin).isPresent()
                && evidence.lineage().madeOf(lot).stream()
                        .flatMap(made -> evidence.farm().entries(made).stream())
                        .noneMatch(entry -> entry.fact() instanceof Selling.Sold);
    }

    private void outcome(Set<LotId> lots, List<Reason> reasons) {
        List<Finding> open = evidence.open(lots);
        if (!open.isEmpty()) {
            Finding worst = open.get(0);
            String parameter = Words.of(worst.outcome());
            String count = open.size() == 1 ? "" : ", the worst of " + open.size() + " findings";
            reasons.add(weights.reason(
                    parameter,
                    "sold as organic, and " + worst.rule() + " is "
                            + (worst.outcome() == Outcome.ASK
                                    ? "to ask"
                                    : worst.outcome().words()) + count,
                    worst.entries()));
        }
    }

    private void ofLots(Set<LotId> lots, List<Reason> reasons) {
        lots.stream()
                .filter(evidence::oversold)
                .findFirst()
                .ifPresent(lot -> reasons.add(
                        weights.reason("oversold", "more went out of lot " + lot + " than came in", openings(lot))));
        lots.stream()
                .flatMap(lot -> evidence.lineage().crop(lot).stream())
                .filter(sales::bothWays)
                .distinct()
                .findFirst()
                .ifPresent(crop -> reasons.add(weights.reason(
                        "grown-both-ways", crop + " is sold as organic and otherwise", sales.otherwise(crop))));
        lots.stream()
                .filter(this::isMixed)
                .findFirst()
                .ifPresent(lot -> reasons.add(
                        weights.reason("joined-or-split", "lot " + lot + " was joined or split", openings(lot))));
        seed(lots, reasons);
        evidence.open(lots).stream()
                .filter(finding -> evidence.link(finding) == ChainLink.INPUTS)
                .flatMap(finding -> finding.places().stream()
                        .filter(MaterialName.class::isInstance)
                        .map(material -> weights.reason(
                                "restricted-input", "a finding on an input behind it: " + material, finding.entries())))
                .findFirst()
                .ifPresent(reasons::add);
    }

    private boolean isMixed(LotId lot) {
        return !evidence.lineage().parents(lot).isEmpty()
                || !evidence.lineage().children(lot).isEmpty();
    }

    private void seed(Set<LotId> lots, List<Reason> reasons) {
        Behind behind = new Behind(evidence.graph());
        lots.stream()
                .flatMap(lot -> evidence.lineage().origins(lot).stream())
                .flatMap(origin -> behind.seedLots(origin).stream())
                .distinct()
                .flatMap(seed -> evidence.farm().ofKind(Stock.SeedReceived.class).stream()
                        .filter(entry -> received(entry).seedLot().key().equals(seed.id())))
                .filter(entry -> !Boolean.TRUE.equals(received(entry).organic()))
                .findFirst()
                .ifPresent(entry -> reasons.add(weights.reason(
                        "seed-bought-in",
                        "seed lot " + received(entry).seedLot()
                                + (received(entry).organic() == null
                                        ? ": whether it is organic is not recorded"
                                        : " is not organic"),
                        numbers(List.of(entry)))));
    }

    private void back(Set<LotId> lots, @Nullable String invoice, List<Reason> reasons) {
        List<Entry> back = returns.stream()
                .filter(entry -> {
                    Selling.CustomerReturned returned = (Selling.CustomerReturned) entry.fact();
                    return (invoice != null && Objects.equals(invoice, returned.invoice()))
                            || returned.lots().stream().map(LotAmount::lot).anyMatch(lots::contains);
                })
                .toList();
        if (!back.isEmpty()) {
            reasons.add(weights.reason("customer-return", "some of it was taken back", numbers(back)));
        }
    }

    private void corrected(List<Entry> entries, Set<LotId> lots, List<Reason> reasons) {
        List<Entry> all = new ArrayList<>(entries);
        lots.forEach(lot -> evidence.account(lot).opening().ifPresent(all::add));
        List<Entry> corrected =
                all.stream().filter(entry -> entry.head().corrects() != null).toList();
        if (!corrected.isEmpty()) {
            reasons.add(weights.reason("corrected", "corrected after it was written", numbers(corrected)));
        }
    }

    /** By crop, the invoice with most of it by weight. */
    private Map<CropName, String> largest(Map<String, List<Entry>> invoices) {
        Map<CropName, Map<String, BigDecimal>> byCrop = new HashMap<>();
        invoices.forEach((id, entries) -> entries.stream()
                .flatMap(entry -> sold(entry).lots().stream())
                .filter(part -> part.quantity().quantity().unit().dimension() == Dimension.MASS)
                .forEach(part -> evidence.lineage()
                        .crop(part.lot())
                        .ifPresent(crop -> byCrop.computeIfAbsent(crop, c -> new LinkedHashMap<>())
                                .merge(id, part.quantity().quantity().inBase(), BigDecimal::add))));
        Map<CropName, String> largest = new HashMap<>();
        byCrop.forEach((crop, masses) -> {
            if (masses.size() >= FEW) {
                BigDecimal most =
                        masses.values().stream().max(BigDecimal::compareTo).orElseThrow();
                List<String> with = masses.entrySet().stream()
                        .filter(each -> each.getValue().compareTo(most) == 0)
                        .map(Map.Entry::getKey)
                        .toList();
                if (with.size() == 1) {
                    largest.put(crop, with.get(0));
                }
            }
        });
        return largest;
    }

    private static Thing thing(String id, List<Entry> entries) {
        Selling.Sold first = sold(entries.get(0));
        if (first.invoice() != null) {
            return new Thing(Kind.SALE, "invoice " + first.invoice(), "invoice " + first.invoice(), id);
        }
        String what = entries.get(0).head().doneOn() + " of "
                + first.lots().stream().map(Object::toString).collect(Collectors.joining(" "));
        return new Thing(
                Kind.SALE,
                "sale " + what + " " + first.as() + " " + first.buyer(),
                "sale without an invoice, " + what,
                id);
    }

    private List<Long> openings(LotId lot) {
        return numbers(evidence.account(lot).opening().stream().toList());
    }

    static List<Long> numbers(Collection<Entry> entries) {
        return entries.stream().map(Entry::number).toList();
    }

    private static Selling.Sold sold(Entry entry) {
        return (Selling.Sold) entry.fact();
    }

    private static Stock.SeedReceived received(Entry entry) {
        return (Stock.SeedReceived) entry.fact();
    }
}

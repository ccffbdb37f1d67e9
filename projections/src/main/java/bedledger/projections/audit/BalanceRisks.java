package bedledger.projections.audit;

import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Harvesting;
import bedledger.language.LotId;
import bedledger.language.LotMove;
import bedledger.language.MaterialName;
import bedledger.language.Stock;
import bedledger.language.Words;
import bedledger.projections.audit.Thing.Kind;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Outcome;
import bedledger.projections.stock.StockMove;
import bedledger.projections.stock.StockMoves;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Crops and materials that came in or went out in the time asked about, each with what makes an inspector look. */
final class BalanceRisks {
    private final Evidence evidence;
    private final Weights weights = Weights.of("balance");
    private final CropSales sales;

    BalanceRisks(Evidence evidence) {
        this.evidence = evidence;
        this.sales = CropSales.of(evidence);
    }

    List<Candidate> all() {
        Map<CropName, List<LotId>> crops = new LinkedHashMap<>();
        evidence.lots().stream()
                .filter(lot -> evidence.account(lot).moves().stream()
                        .map(LotMove::entry)
                        .anyMatch(evidence::isWithin))
                .forEach(lot -> evidence.lineage()
                        .crop(lot)
                        .ifPresent(crop -> crops.computeIfAbsent(crop, c -> new ArrayList<>())
                                .add(lot)));
        int most = crops.keySet().stream().mapToInt(sales::count).max().orElse(0);
        List<Candidate> all = new ArrayList<>();
        crops.forEach((crop, lots) -> all.add(crop(crop, lots, most)));
        evidence.farm().places().stream()
                .filter(MaterialName.class::isInstance)
                .map(MaterialName.class::cast)
                .forEach(material -> material(material).ifPresent(all::add));
        return all;
    }

    private Candidate crop(CropName crop, List<LotId> lots, int most) {
        List<Reason> reasons = new ArrayList<>();
        reasons.add(weights.reason("start", "harvested, found, sold or lost in the time asked about", List.of()));
        outcome(evidence.open(lots), reasons);
        lots.stream()
                .filter(evidence::oversold)
                .findFirst()
                .ifPresent(lot -> reasons.add(
                        weights.reason("oversold", "more went out of lot " + lot + " than came in", numbers(lot))));
        if (sales.bothWays(crop)) {
            reasons.add(weights.reason("grown-both-ways", "sold as organic and otherwise", sales.otherwise(crop)));
        }
        lots.stream()
                .filter(lot -> !evidence.lineage().parents(lot).isEmpty())
                .findFirst()
                .ifPresent(lot -> reasons.add(
                        weights.reason("joined-or-split", "lot " + lot + " was joined or split off", numbers(lot))));
        List<Long> back = lots.stream()
                .flatMap(lot -> evidence.account(lot).moves(LotMove.Way.TAKEN_BACK).stream())
                .map(move -> move.entry().number())
                .toList();
        if (!back.isEmpty()) {
            reasons.add(weights.reason("customer-return", "some was taken back", back));
        }
        boolean counted = evidence.within(Harvesting.StoreCounted.class).stream()
                .anyMatch(
                        entry -> ((Harvesting.StoreCounted) entry.fact()).crop().equals(crop));
        if (!counted) {
            reasons.add(weights.reason("never-counted", "not counted in the time asked about", List.of()));
        }
        if (most > 1 && sales.count(crop) == most) {
            reasons.add(weights.reason("largest", "on more invoices than any other crop", List.of()));
        }
        return new Candidate(new Thing(Kind.CROP, crop.name(), crop.name(), crop.name()), reasons);
    }

    private Optional<Candidate> material(MaterialName material) {
        List<StockMove> moves = StockMoves.of(evidence.farm(), material, evidence.day()).stream()
                .filter(move -> evidence.isWithin(move.entry()))
                .toList();
        if (moves.stream().noneMatch(move -> move.way().sign() != 0)) {
            return Optional.empty();
        }
        List<Reason> reasons = new ArrayList<>();
        reasons.add(weights.reason("start", "came in or was used in the time asked about", List.of()));
        outcome(evidence.naming(material), reasons);
        if (moves.stream().noneMatch(move -> move.entry().fact() instanceof Stock.MaterialCounted)) {
            reasons.add(weights.reason("never-counted", "not counted in the time asked about", List.of()));
        }
        return Optional.of(
                new Candidate(new Thing(Kind.MATERIAL, material.name(), material.name(), material.name()), reasons));
    }

    private void outcome(List<Finding> open, List<Reason> reasons) {
        if (!open.isEmpty()) {
            Finding worst = open.get(0);
            reasons.add(weights.reason(
                    Words.of(worst.outcome()),
                    worst.rule() + " is "
                            + (worst.outcome() == Outcome.ASK
                                    ? "to ask"
                                    : worst.outcome().words())
                            + (open.size() == 1 ? "" : ", the worst of " + open.size() + " findings"),
                    worst.entries()));
        }
    }

    private List<Long> numbers(LotId lot) {
        return evidence.account(lot).opening().map(Entry::number).stream().toList();
    }
}

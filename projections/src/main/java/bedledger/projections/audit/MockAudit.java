package bedledger.projections.audit;

import bedledger.language.CropName;
import bedledger.language.Farm;
import bedledger.language.LotAccount;
import bedledger.language.MaterialName;
import bedledger.projections.audit.Thing.Kind;
import bedledger.projections.balance.Balance;
import bedledger.projections.balance.CropBalance;
import bedledger.projections.balance.MaterialBalance;
import bedledger.projections.findings.Findings;
import bedledger.projections.findings.Outcome;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Picks as an inspector might, and answers each pick; the same for the same record and seed, in whatever order entries come in. */
public final class MockAudit {
    private final Evidence evidence;

    private MockAudit(Evidence evidence) {
        this.evidence = evidence;
    }

    /**
     * Of a record.
     *
     * @param from sales and moves are looked for from that day on
     * @param day the last day that counts
     * @param rules the id of the rule book of the findings, which are those of that day
     */
    public static MockAudit of(Farm farm, LocalDate from, LocalDate day, String rules, Findings findings) {
        return new MockAudit(new Evidence(farm, from, day, rules, findings));
    }

    /** All that can be traced back: sales, and lots on no invoice. */
    public List<Candidate> traceable() {
        return new SaleRisks(evidence).all();
    }

    /** All that can be balanced: crops and materials. */
    public List<Candidate> balanceable() {
        return new BalanceRisks(evidence).all();
    }

    /** So many of them, the first drawn first; fewer where there are no more. */
    public static List<Candidate> drawn(List<Candidate> candidates, int many, String seed) {
        return new Draw(seed).from(candidates, many);
    }

    /** A sale or a lot back to the land. */
    public TraceAnswer trace(Thing thing) {
        return new TraceBack(evidence, thing).answer();
    }

    /** A crop or a material between its last counts. */
    public BalanceAnswer balance(Thing thing) {
        if (thing.kind() == Kind.MATERIAL) {
            Balance balance =
                    MaterialBalance.of(evidence.farm(), new MaterialName(thing.id()), null, null, evidence.day());
            return new BalanceAnswer(balance, open(balance, "did count-material \"" + thing.id() + '"'));
        }
        CropBalance crop = CropBalance.of(evidence.farm(), new CropName(thing.id()), null, null, evidence.day());
        List<Question> open = open(crop.balance(), "did count " + typed(thing.id()));
        crop.oversold().stream().map(MockAudit::oversold).forEach(open::add);
        open.sort(java.util.Comparator.comparing(Question::outcome).reversed());
        return new BalanceAnswer(crop.balance(), open);
    }

    private static List<Question> open(Balance balance, String count) {
        List<Question> open = new ArrayList<>();
        for (String missing : balance.missing()) {
            String day = missing.contains("on " + balance.from() + ";")
                    ? balance.from().toString()
                    : balance.to().toString();
            open.add(new Question(
                    Outcome.INCOMPLETE,
                    missing,
                    missing.startsWith("#")
                            ? "Say what one of them weighs, or how much it was, and correct that entry."
                            : count + " --quantity AMOUNT --on " + day,
                    List.of(),
                    ""));
        }
        balance.difference()
                .filter(difference -> difference.signum() != 0)
                .ifPresent(difference -> open.add(different(balance, difference)));
        return open;
    }

    private static Question different(Balance balance, BigDecimal difference) {
        List<Long> entries = balance.closing().map(count -> count.entries()).orElse(List.of());
        return new Question(
                Outcome.ASK,
                difference.abs().toPlainString() + " " + balance.unit().symbol()
                        + (difference.signum() < 0 ? " less" : " more") + " was counted than the book expects.",
                "Look for a loss, a gift or a sale that was not entered, or a wrong weight; the rule sets no tolerance.",
                entries,
                "");
    }

    private static Question oversold(LotAccount lot) {
        return new Question(
                Outcome.ASK,
                "More went out of lot " + lot.lot() + " than came in: "
                        + lot.left().orElseThrow() + " on paper.",
                "Look for a line put to the wrong lot, a weight written down wrong, or a harvest that was not entered.",
                lot.moves().stream().map(move -> move.entry().number()).toList(),
                "");
    }

    private static String typed(String name) {
        return name.contains(" ") ? '"' + name + '"' : name;
    }
}

package bedledger.cli.report;

import bedledger.language.Dimension;
import bedledger.projections.balance.Balance;
import bedledger.projections.balance.Plausible;
import bedledger.projections.estimate.Estimate;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether what was sown, the area and a typical yield bear what was harvested and sold: figures side by side, no judgement. */
record SeedToSale(Asked asked, Balance balance, Plausible plausible) {
    List<Phrase> lines() {
        List<Phrase> lines = new ArrayList<>();
        if (plausible.starts().isEmpty()) {
            lines.add(Phrase.of("No sowing or planting of it is on record in this time."));
        }
        plausible
                .starts()
                .forEach(start -> lines.add(Phrase.whole(start.day().toString())
                        .plus(" " + start.words() + " ")
                        .plus(asked.links().entry(start.entry()))));
        if (plausible.squareMetres() > 0) {
            lines.add(Phrase.of(String.format(Locale.ROOT, "Area: %.1f m² of bed tops, ", plausible.squareMetres())
                    + String.join(" ", plausible.beds()) + "."));
        }
        lines.add(Phrase.of(
                plausible.typical().map(this::typical).orElse("Typical yield: none in the tables for this crop.")));
        return lines;
    }

    private String typical(Estimate typical) {
        return "Typical yield of that area: " + asked.book().massUnit().words(typical)
                + "; a guess from fields per acre, and closely planted beds give more."
                + harvested()
                        .map(sum -> " Harvested: " + BalanceTable.number(sum) + " "
                                + balance.unit().symbol() + place(typical, sum) + ".")
                        .orElse("");
    }

    private Optional<BigDecimal> harvested() {
        return balance.lines().stream()
                .filter(line -> line.words().equals("harvested"))
                .map(Balance.Line::sum)
                .findFirst();
    }

    /** Against the band, where both are weights. */
    private String place(Estimate typical, BigDecimal harvested) {
        if (balance.unit().dimension() != Dimension.MASS || !typical.hasBand()) {
            return "";
        }
        double kilograms =
                harvested.multiply(balance.unit().factor()).movePointLeft(3).doubleValue();
        return kilograms > typical.high()
                ? ", above that band"
                : kilograms < typical.low() ? ", below that band" : ", within that band";
    }
}

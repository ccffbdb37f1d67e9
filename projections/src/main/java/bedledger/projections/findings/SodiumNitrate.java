package bedledger.projections.findings;

import bedledger.language.Amount;
import bedledger.language.Fertility;
import bedledger.language.MaterialName;
import bedledger.language.Share;
import bedledger.language.Stock;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Sodium nitrate gives at most a fifth of the crop's nitrogen: 7 CFR 205.602(h), (g) before rotenone was listed. */
record SodiumNitrate(RuleSheet sheet, Figures figures) implements Rule {
    private static final Pattern NEED =
            Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*kg\\s*n\\s*/\\s*ha", Pattern.CASE_INSENSITIVE);

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Fertility.Spread.class).stream()
                .flatMap(done -> Optional.ofNullable(done.fact().material()).stream()
                        .filter(material -> inquiry.texts(material).stream().anyMatch(Said.SODIUM_NITRATE::in))
                        .map(material -> finding(inquiry, done, material)))
                .toList();
    }

    /** The program held in 2012 that the limit lapsed on this day; it has stood in the text all along, and was lettered anew in 2018. */
    private static final LocalDate LAPSED = LocalDate.of(2012, 10, 21);

    /** The most nitrogen that may come from it, in the unit of the need. */
    BigDecimal most(BigDecimal need) {
        return need.multiply(figures.number("sodium-nitrate.percent"))
                .divide(BigDecimal.valueOf(100), MathContext.DECIMAL64);
    }

    /** The most of a product with such a share of nitrogen, in the unit of the need. */
    BigDecimal mostProduct(BigDecimal need, BigDecimal percentNitrogen) {
        return most(need).multiply(BigDecimal.valueOf(100)).divide(percentNitrogen, MathContext.DECIMAL64);
    }

    private Finding finding(Inquiry inquiry, Done<Fertility.Spread> done, MaterialName material) {
        Fertility.Spread spread = done.fact();
        boolean relettered = !done.day().isBefore(Prohibited.RELETTERED);
        String where = material + " on " + Wording.list(spread.beds()) + " on " + done.day();
        Draft draft = new Draft(sheet, inquiry, Wording.list(spread.beds()) + " " + material, done.day())
                .at(material)
                .at(spread.beds())
                .restsOn(done.entry())
                .citing("7 CFR 205.602(" + (relettered ? "h" : "g") + ")");
        if (!inquiry.is(Reading.SODIUM_NITRATE_WITHIN_A_FIFTH)) {
            return draft.settledBy("Ask the certifier what becomes of the crop.")
                    .says(Outcome.NOT_MET, where + ": none is taken to be allowed, as this book is set.");
        }
        Optional<BigDecimal> given = nitrogenPerHectare(inquiry, done, material);
        Optional<BigDecimal> need = need(spread.reason());
        if (given.isEmpty() || need.isEmpty()) {
            return draft.counting(given.map(kilos -> kilos + " kg N/ha given").orElse(""))
                    .settledBy(
                            "Enter the weight, its nitrogen (--nitrogen 16%) and what the crop needs in all: --reason \"crop needs 100"
                                    + " kg N/ha, table …\".")
                    .says(
                            Outcome.INCOMPLETE,
                            where + ": " + (given.isEmpty() ? "how much nitrogen it gave cannot be worked out" : "")
                                    + (given.isEmpty() && need.isEmpty() ? ", and " : "")
                                    + (need.isEmpty() ? "what nitrogen the crop needs in all is not recorded" : "")
                                    + "; no more than " + figures.number("sodium-nitrate.percent")
                                    + " % may come from it.");
        }
        BigDecimal most = most(need.get());
        boolean within = given.get().compareTo(most) <= 0;
        boolean open = !within && !relettered && !done.day().isBefore(LAPSED);
        Outcome above = open ? Outcome.ASK : Outcome.NOT_MET;
        return draft.counting(given.get() + " kg N/ha given; " + need.get().toPlainString() + " × "
                        + figures.number("sodium-nitrate.percent") + " % = "
                        + most.stripTrailingZeros().toPlainString() + " kg N/ha at most")
                .settledBy(within ? "" : "Ask the certifier what becomes of the crop.")
                .says(
                        within ? Outcome.MET : above,
                        where + ": " + (within ? "within" : "above")
                                + " the share of the crop's nitrogen that may come from it"
                                + (open ? "; the program held in 2012 that this limit had lapsed." : "."));
    }

    private static Optional<BigDecimal> need(@Nullable String reason) {
        Matcher found = NEED.matcher(reason == null ? "" : reason);
        return found.find() ? Optional.of(new BigDecimal(found.group(1))) : Optional.empty();
    }

    private static Optional<BigDecimal> nitrogenPerHectare(
            Inquiry inquiry, Done<Fertility.Spread> done, MaterialName material) {
        Fertility.Spread spread = done.fact();
        double hectares = spread.beds().stream()
                        .mapToDouble(
                                bed -> inquiry.farm().bed(bed).on(done.day()).squareMetres())
                        .sum()
                / 10_000;
        Share share = spread.nitrogen() == null ? listed(inquiry, material) : spread.nitrogen();
        Optional<Double> kilograms = kilograms(spread.quantity(), 1)
                .or(() -> kilograms(spread.perBed(), spread.beds().size()));
        return share == null || hectares <= 0
                ? Optional.empty()
                : kilograms.map(kilos -> BigDecimal.valueOf(kilos * share.percent() / 100 / hectares)
                        .setScale(1, RoundingMode.HALF_UP));
    }

    static Optional<Double> kilograms(@Nullable Amount amount, int times) {
        return amount == null || !amount.isWeight() ? Optional.empty() : Optional.of(amount.kilograms() * times);
    }

    private static @Nullable Share listed(Inquiry inquiry, MaterialName material) {
        return inquiry.done(material, Stock.MaterialListed.class).stream()
                .flatMap(listed -> Stream.ofNullable(listed.fact().nitrogen()))
                .reduce((one, other) -> other)
                .orElse(null);
    }
}

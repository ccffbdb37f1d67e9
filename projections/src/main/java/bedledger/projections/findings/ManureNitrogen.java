package bedledger.projections.findings;

import bedledger.language.Fertility;
import bedledger.language.MaterialName;
import bedledger.language.Stock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The nitrogen that one spreading of livestock manure brings.
 *
 * @param kilograms null where it cannot be worked out
 * @param how by which figure, or why not
 */
record ManureNitrogen(
        Done<Fertility.Spread> spread,
        String what,
        @Nullable Range kilograms,
        String how) {
    /** Kilograms of nitrogen; {@code exact} where it comes from the farm's own figures or from a table's range. */
    record Range(double low, double best, double high, boolean exact) {
        Range plus(Range other) {
            return new Range(low + other.low, best + other.best, high + other.high, exact && other.exact);
        }
    }

    /** Plant-only compost and what holds no manure do not count. */
    static Optional<ManureNitrogen> of(Inquiry inquiry, Done<Fertility.Spread> spread) {
        Fertility.Spread fact = spread.fact();
        if (fact.manure() != null) {
            return Optional.of(load(inquiry, spread, fact.manure(), true));
        }
        if (fact.pile() != null) {
            Ingredients nature = Ingredients.of(
                    PileLog.of(inquiry, fact.pile(), spread.day()).built());
            return nature == Ingredients.PLANT
                    ? Optional.empty()
                    : Optional.of(
                            load(inquiry, spread, "compost of pile " + fact.pile(), nature == Ingredients.ANIMAL));
        }
        MaterialName material = fact.material();
        return material != null && inquiry.texts(material).stream().anyMatch(Ingredients::manure)
                ? Optional.of(load(inquiry, spread, material.name(), true))
                : Optional.empty();
    }

    private static ManureNitrogen load(Inquiry inquiry, Done<Fertility.Spread> spread, String what, boolean certain) {
        Fertility.Spread fact = spread.fact();
        Optional<Double> kilograms = SodiumNitrate.kilograms(fact.quantity(), 1)
                .or(() -> SodiumNitrate.kilograms(fact.perBed(), fact.beds().size()));
        if (kilograms.isEmpty()) {
            return new ManureNitrogen(spread, what, null, "its weight is not recorded");
        }
        double kilos = kilograms.get();
        Optional<Double> own = own(inquiry, fact);
        if (own.isPresent()) {
            double nitrogen = kilos * own.get() / 100;
            return new ManureNitrogen(
                    spread,
                    what,
                    new Range(certain ? nitrogen : 0, nitrogen, nitrogen, true),
                    own.get() + " % N as recorded");
        }
        return inquiry.nitrogen(what)
                .map(content -> new ManureNitrogen(
                        spread,
                        what,
                        ofTable(kilos, content, certain),
                        content.value() + " kg N/t, table value of " + content.of() + " (" + content.source() + ")"))
                .orElse(new ManureNitrogen(spread, what, null, "its nitrogen is not recorded, and no table has it"));
    }

    private static Range ofTable(double kilos, Content content, boolean certain) {
        double best = kilos * content.value() / 1000;
        boolean known = content.low() != null && content.high() != null;
        double low = content.low() == null ? best : kilos * content.low() / 1000;
        double high = content.high() == null ? best : kilos * content.high() / 1000;
        return new Range(certain ? low : 0, best, high, known);
    }

    private static Optional<Double> own(Inquiry inquiry, Fertility.Spread fact) {
        if (fact.nitrogen() != null) {
            return Optional.of(fact.nitrogen().percent());
        }
        return fact.material() == null
                ? Optional.empty()
                : inquiry.done(fact.material(), Stock.MaterialListed.class).stream()
                        .flatMap(listed -> Optional.ofNullable(listed.fact().nitrogen()).stream())
                        .map(share -> share.percent())
                        .reduce((one, other) -> other);
    }
}

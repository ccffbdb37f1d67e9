package bedledger.projections.returned;

import bedledger.language.Share;
import bedledger.language.Stock.MaterialListed;
import bedledger.projections.estimate.DryShare;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.MaterialContent;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a material's make-up: from the entry that spread it first, then from its listing.
 *
 * @param dry share of fresh
 * @param nitrogen share of fresh
 * @param phosphorus share of fresh, as P
 * @param carbon share of dry
 */
record Content(
        Optional<DryShare> dry, Optional<Double> nitrogen, Optional<Double> phosphorus, Optional<Double> carbon) {
    static final Content UNKNOWN = new Content(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    static Content recorded(@Nullable Share moisture, @Nullable Share nitrogen, @Nullable Share phosphorus) {
        Optional<DryShare> dry = share(moisture).filter(each -> each < 1).map(each -> new DryShare(1 - each));
        return new Content(dry, share(nitrogen), share(phosphorus), Optional.empty());
    }

    static Content listed(MaterialListed listed) {
        return new Content(
                Cuts.dry(listed.dry()), share(listed.nitrogen()), share(listed.phosphorus()), share(listed.carbon()));
    }

    private static Optional<Double> share(@Nullable Share share) {
        return Optional.ofNullable(share).map(each -> each.percent() / 100);
    }

    Content or(Content other) {
        return new Content(
                dry.or(other::dry),
                nitrogen.or(other::nitrogen),
                phosphorus.or(other::phosphorus),
                carbon.or(other::carbon));
    }

    /** The content of a fresh mass; what is not recorded comes from the tables, what they do not hold is named. */
    Matter of(String material, double freshKilograms, Basis basis, Working working) {
        MaterialContent tables = MaterialContent.of(material, freshKilograms, dry, basis.tables);
        Optional<Estimate> carbonHere = tables.dry().flatMap(mass -> carbon.map(mass::times));
        Optional<Estimate> carbonThere = carbonHere.or(tables::carbon);
        Optional<Estimate> nitrogenThere = recorded(nitrogen, freshKilograms).or(tables::nitrogen);
        Optional<Estimate> phosphorusThere =
                recorded(phosphorus, freshKilograms).or(tables::phosphorus);
        name(working, material + " dry share", tables.dry());
        name(working, material + " carbon", carbonThere);
        name(working, material + " nitrogen", nitrogenThere);
        name(working, material + " phosphorus", phosphorusThere);
        said(working);
        return new Matter(
                Optional.of(Estimate.exact(freshKilograms, "kg")),
                tables.dry(),
                carbonThere,
                nitrogenThere,
                phosphorusThere,
                carbonThere.flatMap(
                        each -> nitrogenThere.filter(under -> under.best() > 0).map(under -> each.ratioTo(under, ""))));
    }

    private void said(Working working) {
        List<String> recorded = java.util.stream.Stream.of(
                        dry.map(each -> "dry share"),
                        nitrogen.map(each -> "nitrogen"),
                        phosphorus.map(each -> "phosphorus"),
                        carbon.map(each -> "carbon"))
                .flatMap(Optional::stream)
                .toList();
        if (!recorded.isEmpty()) {
            working.remark("as recorded, without doubt of its own: " + String.join(", ", recorded));
        }
    }

    private static Optional<Estimate> recorded(Optional<Double> share, double freshKilograms) {
        return share.map(each -> Estimate.exact(freshKilograms * each, "kg").by("recorded quantity x share recorded"));
    }

    private static void name(Working working, String gap, Optional<Estimate> part) {
        if (part.isEmpty()) {
            working.missing(gap);
        }
    }
}

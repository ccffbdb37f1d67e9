package bedledger.projections.findings;

import bedledger.language.Harvesting;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What may be sold as organic is not put together with what may not: 7 CFR 205.272(a). */
record LotsKeptApart(RuleSheet sheet, Figures figures) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Harvesting.LotsJoined.class).stream()
                .flatMap(joined -> finding(inquiry, joined).stream())
                .toList();
    }

    private Optional<Finding> finding(Inquiry inquiry, Done<Harvesting.LotsJoined> joined) {
        List<LotId> clean = new ArrayList<>();
        List<LotId> not = new ArrayList<>();
        for (LotAmount part : joined.fact().lots()) {
            for (LotId origin : inquiry.lineage().origins(part.lot())) {
                Ground ground = Ground.of(inquiry, figures, origin);
                if (ground == Ground.CLEAN) {
                    clean.add(origin);
                } else if (ground == Ground.NOT_CLEAN) {
                    not.add(origin);
                }
            }
        }
        if (clean.isEmpty() || not.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Draft(sheet, inquiry, "lot " + joined.fact().into(), joined.day())
                .lots(List.of(joined.fact().into()))
                .restsOn(joined.entry())
                .settledBy("Do not sell " + joined.fact().into()
                        + " as organic; ask the certifier about what was already sold.")
                .says(
                        Outcome.NOT_MET,
                        "Lot " + joined.fact().into() + " was joined on " + joined.day() + " of "
                                + Wording.lots(clean) + " and of " + Wording.lots(not)
                                + ", which was picked from land that was not three years clean."));
    }
}

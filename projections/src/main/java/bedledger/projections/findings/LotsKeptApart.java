package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.FieldId;
import bedledger.language.Harvesting;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What may be sold as organic is not put together with what may not: 7 CFR 205.272(a). */
record LotsKeptApart(RuleSheet sheet, Figures figures) implements Rule {
    private enum Ground {
        CLEAN,
        NOT_CLEAN,
        NOT_KNOWN
    }

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
                Ground ground = ground(inquiry, origin);
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

    /** By the land it was picked from, on the day it was picked. */
    private Ground ground(Inquiry inquiry, LotId lot) {
        return inquiry.done(lot, Harvesting.Harvested.class).stream()
                .filter(harvest -> harvest.fact().lot().equals(lot))
                .findFirst()
                .flatMap(harvest -> harvest.fact().beds().stream()
                        .map(bed -> ground(inquiry, bed, harvest.day()))
                        .max(java.util.Comparator.comparing(Ground::ordinal)))
                .orElse(Ground.NOT_KNOWN);
    }

    private Ground ground(Inquiry inquiry, BedId bed, LocalDate day) {
        @Nullable FieldId field = inquiry.farm().bed(bed).on(day).field();
        if (field == null) {
            return Ground.NOT_KNOWN;
        }
        return LandHistory.of(inquiry, figures, field)
                .eligibleFrom(day)
                .map(from -> day.isBefore(from) ? Ground.NOT_CLEAN : Ground.CLEAN)
                .orElse(Ground.NOT_KNOWN);
    }
}

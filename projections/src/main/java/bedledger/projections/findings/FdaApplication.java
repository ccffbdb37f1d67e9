package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.CropName;
import bedledger.language.Fertility;
import bedledger.language.Harvesting;
import bedledger.language.LotId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Untreated manure does not touch the produce as it is put on: 21 CFR 112.56(a)(1). The days to harvest are reserved there. */
record FdaApplication(RuleSheet sheet, Figures figures) implements Rule {

    /** One spreading of untreated matter, and what stood in the beds. */
    private static final class Spreading {
        private final Done<Fertility.Spread> spread;
        private final RawMatter matter;
        private final Set<CropName> standing = new LinkedHashSet<>();
        private final Set<LotId> lots = new LinkedHashSet<>();

        Spreading(Done<Fertility.Spread> spread, RawMatter matter) {
            this.spread = spread;
            this.matter = matter;
        }
    }

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<Long, Spreading> all = new LinkedHashMap<>();
        inquiry.done(Fertility.Spread.class)
                .forEach(spread -> RawMatter.of(inquiry, figures, spread)
                        .ifPresent(matter -> all.put(spread.number(), new Spreading(spread, matter))));
        inquiry.beds().forEach(bed -> walk(inquiry, bed, all));
        List<Finding> findings = new ArrayList<>();
        List<Spreading> bare = new ArrayList<>();
        all.values().forEach(one -> {
            if (one.standing.isEmpty()) {
                bare.add(one);
            } else {
                findings.add(standing(inquiry, one));
            }
        });
        Yearly.of(bare, one -> one.spread.day()).forEach((year, of) -> findings.add(bare(inquiry, year, of)));
        return findings;
    }

    private static void walk(Inquiry inquiry, BedId bed, Map<Long, Spreading> all) {
        Map<CropName, List<Spreading>> open = new LinkedHashMap<>();
        for (BedStep step : inquiry.steps(bed)) {
            step.as(Harvesting.Harvested.class)
                    .ifPresent(harvest -> open.getOrDefault(harvest.fact().crop(), List.of())
                            .forEach(one -> one.lots.add(harvest.fact().lot())));
            open.keySet().removeIf(crop -> !step.after().grows(crop));
            Spreading spreading = all.get(step.number());
            if (spreading != null) {
                step.before().crops().stream()
                        .filter(stand -> !stand.cover())
                        .map(BedState.Stand::crop)
                        .forEach(crop -> {
                            spreading.standing.add(crop);
                            open.computeIfAbsent(crop, key -> new ArrayList<>()).add(spreading);
                        });
            }
        }
    }

    private Finding standing(Inquiry inquiry, Spreading one) {
        List<BedId> beds = one.spread.fact().beds();
        String crops = one.standing.stream().map(CropName::name).sorted().collect(Collectors.joining(", "));
        return new Draft(sheet, inquiry, Wording.list(beds) + " " + crops, one.spread.day())
                .at(beds)
                .lots(one.lots)
                .restsOn(one.spread.entry())
                .restsOn(one.matter.entries())
                .settledBy(
                        "Note how it was kept off the plants, and ask whoever advises you on food safety; the certifier's days to"
                                + " harvest run beside this.")
                .says(
                        Outcome.ASK,
                        Wording.capital(one.matter.words()) + " was spread on " + Wording.list(beds) + " on "
                                + one.spread.day() + " while " + crops
                                + " stood there; whether it touched the plants is not recorded."
                                + (one.matter.because().isEmpty() ? "" : " " + one.matter.because()));
    }

    private Finding bare(Inquiry inquiry, int year, List<Spreading> of) {
        return new Draft(
                        sheet,
                        inquiry,
                        "untreated manure of " + year,
                        of.get(0).spread.day())
                .at(of.stream()
                        .flatMap(one -> one.spread.fact().beds().stream())
                        .toList())
                .restsOn(of.stream().map(one -> one.spread.number()).toList())
                .says(
                        Outcome.MET,
                        "What counts as untreated manure was spread " + Wording.times(of.size()) + " in " + year
                                + ", each time on beds where no crop stood.");
    }
}

package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.Fertility;
import bedledger.language.Land;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Nitrogen from livestock manure over the agricultural area of the holding and year: 2018/848 Annex II Part I, 1.9.4. */
record LivestockNitrogen(RuleSheet sheet, Figures figures) implements Rule {

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        List<ManureNitrogen> loads = inquiry.done(Fertility.Spread.class).stream()
                .flatMap(spread -> ManureNitrogen.of(inquiry, spread).stream())
                .toList();
        return Yearly.of(loads, load -> load.spread().day()).entrySet().stream()
                .map(year -> finding(inquiry, year.getKey(), year.getValue()))
                .toList();
    }

    private Finding finding(Inquiry inquiry, int year, List<ManureNitrogen> loads) {
        LocalDate end = LocalDate.of(year, 12, 31);
        double hectares = inquiry.done(Land.FieldRegistered.class).stream()
                        .filter(field -> !field.day().isAfter(end))
                        .mapToDouble(field -> field.fact().gross().squareMetres())
                        .sum()
                / 10_000;
        List<ManureNitrogen> unknown =
                loads.stream().filter(load -> load.kilograms() == null).toList();
        ManureNitrogen.Range sum = loads.stream()
                .flatMap(load -> Optional.ofNullable(load.kilograms()).stream())
                .reduce(new ManureNitrogen.Range(0, 0, 0, true), ManureNitrogen.Range::plus);
        double limit = figures.number("livestock.nitrogen").doubleValue();
        Outcome outcome =
                hectares <= 0 ? Outcome.INCOMPLETE : outcome(inquiry, sum, hectares, limit, !unknown.isEmpty());
        return new Draft(
                        sheet,
                        inquiry,
                        "livestock manure of " + year,
                        loads.get(0).spread().day())
                .at(loads.stream()
                        .flatMap(load -> load.spread().fact().beds().stream())
                        .toList())
                .restsOn(loads.stream().map(load -> load.spread().number()).toList())
                .counting(hectares <= 0 ? "" : sum(sum, hectares, limit))
                .settledBy(settles(outcome))
                .says(outcome, sentence(inquiry, year, loads, unknown));
    }

    private static Outcome outcome(
            Inquiry inquiry, ManureNitrogen.Range sum, double hectares, double limit, boolean unknown) {
        boolean lowAbove = over(sum.low(), hectares, limit);
        boolean highAbove = over(sum.high(), hectares, limit);
        boolean counts = sum.exact() || inquiry.is(Reading.TABLE_NITROGEN_COUNTS);
        if (lowAbove) {
            return counts ? Outcome.NOT_MET : Outcome.ASK;
        }
        if (unknown) {
            return Outcome.INCOMPLETE;
        }
        return highAbove || !counts ? Outcome.ASK : Outcome.MET;
    }

    /** Exactly the limit does not exceed it; a billionth is rounding. */
    private static boolean over(double kilograms, double hectares, double limit) {
        return kilograms / hectares > limit * (1 + 1e-9);
    }

    private static String sum(ManureNitrogen.Range sum, double hectares, double limit) {
        String range = sum.high() - sum.low() > 1e-9
                ? " (" + figure(sum.low() / hectares) + " to " + figure(sum.high() / hectares) + ")"
                : "";
        return figure(sum.best()) + " kg N / " + figure(hectares) + " ha = " + figure(sum.best() / hectares) + " kg/ha"
                + range + ", " + figure(limit) + " at most";
    }

    private static String figure(double number) {
        return java.math.BigDecimal.valueOf(number)
                .round(new java.math.MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String sentence(
            Inquiry inquiry, int year, List<ManureNitrogen> loads, List<ManureNitrogen> unknown) {
        String known = loads.stream()
                .filter(load -> load.kilograms() != null)
                .map(load -> load.what() + ": " + load.how())
                .distinct()
                .collect(Collectors.joining("; "));
        String gaps = unknown.stream()
                .map(load -> load.what() + " on " + load.spread().day() + ": " + load.how())
                .distinct()
                .collect(Collectors.joining("; "));
        return "Livestock manure was spread " + Wording.times(loads.size()) + " in " + year + "."
                + (known.isEmpty() ? "" : " Nitrogen by " + known + ".")
                + (gaps.isEmpty() ? "" : " Not counted: " + gaps + ".")
                + most(inquiry, loads);
    }

    /** The limit is over the area of the holding, so one bed may have more. */
    private static String most(Inquiry inquiry, List<ManureNitrogen> loads) {
        Map<BedId, Double> perHectare = new HashMap<>();
        for (ManureNitrogen load : loads) {
            ManureNitrogen.Range kilograms = load.kilograms();
            double hectares = load.spread().fact().beds().stream()
                            .mapToDouble(bed -> inquiry.farm()
                                    .bed(bed)
                                    .on(load.spread().day())
                                    .squareMetres())
                            .sum()
                    / 10_000;
            if (kilograms != null && hectares > 0) {
                load.spread()
                        .fact()
                        .beds()
                        .forEach(bed -> perHectare.merge(bed, kilograms.best() / hectares, Double::sum));
            }
        }
        return perHectare.entrySet().stream()
                .max(Map.Entry.<BedId, Double>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(
                                Comparator.comparing(BedId::name).reversed())))
                .map(bed -> " Most on one bed: " + figure(bed.getValue()) + " kg/ha on " + bed.getKey()
                        + "; the limit is on the area of the holding, not on a bed.")
                .orElse("");
    }

    private static String settles(Outcome outcome) {
        return switch (outcome) {
            case MET -> "";
            case NOT_MET -> "Tell the control body, and spread less, or agree with another organic holding (1.9.5).";
            case INCOMPLETE ->
                "Correct the entries with the weight and the nitrogen, from a test or the supplier: --quantity 2t --nitrogen 0.6%.";
            case ASK -> "Ask the control body which nitrogen contents count, or enter a tested one: --nitrogen 0.6%.";
        };
    }
}

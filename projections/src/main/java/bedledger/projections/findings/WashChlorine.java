package bedledger.projections.findings;

import bedledger.language.Harvesting;
import bedledger.language.LotId;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Chlorine in water that touches produce, against the limit for drinking water: 7 CFR 205.601(a)(2), 205.605(b). */
record WashChlorine(RuleSheet sheet, Figures figures) implements Rule {
    private static final Pattern STRENGTH =
            Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*(?:ppm|mg/l)", Pattern.CASE_INSENSITIVE);

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<Outcome, List<Done<Harvesting.LotsWashed>>> by = new TreeMap<>();
        inquiry.done(Harvesting.LotsWashed.class).stream()
                .filter(done -> done.fact().sanitizer() != null
                        && Said.CHLORINE.in(done.fact().sanitizer().name()))
                .forEach(done -> by.computeIfAbsent(outcome(done.fact()), outcome -> new ArrayList<>())
                        .add(done));
        return by.entrySet().stream()
                .flatMap(same -> Yearly.of(same.getValue(), Done::day).values().stream()
                        .map(year -> finding(inquiry, same.getKey(), year)))
                .toList();
    }

    private Outcome outcome(Harvesting.LotsWashed washed) {
        return strength(washed.strength())
                .map(ppm -> ppm.compareTo(figures.number("chlorine.ppm")) <= 0 ? Outcome.MET : Outcome.ASK)
                .orElse(Outcome.INCOMPLETE);
    }

    private static Optional<BigDecimal> strength(@Nullable String text) {
        Matcher found = STRENGTH.matcher(text == null ? "" : text);
        return found.find() ? Optional.of(new BigDecimal(found.group(1))) : Optional.empty();
    }

    private Finding finding(Inquiry inquiry, Outcome outcome, List<Done<Harvesting.LotsWashed>> all) {
        List<LotId> lots = all.stream()
                .flatMap(done -> done.fact().lots().stream())
                .distinct()
                .toList();
        String limit = figures.number("chlorine.ppm") + " ppm";
        String read = all.stream()
                .map(done -> done.day() + " "
                        + (done.fact().strength() == null
                                ? "not read"
                                : done.fact().strength()))
                .collect(Collectors.joining("; "));
        Draft draft = new Draft(
                        sheet,
                        inquiry,
                        "wash water with chlorine, " + all.get(0).day().getYear(),
                        all.get(0).day())
                .lots(lots)
                .restsOn(all.stream().map(Done::number).toList())
                .counting(
                        outcome == Outcome.INCOMPLETE
                                ? ""
                                : read + "; " + limit + " at most in what touches the produce last");
        return switch (outcome) {
            case MET -> draft.says(outcome, "Wash water with chlorine, never above " + limit + ".");
            case ASK ->
                draft.settledBy(
                                "Note the last rinse in drinking water: --note \"rinsed, 1 ppm\"; ask the certifier whether that"
                                        + " is how they read it.")
                        .says(
                                outcome,
                                "Wash water with chlorine above " + limit + " (" + read
                                        + "): that is allowed only if a rinse at or below " + limit
                                        + " follows, which is not recorded.");
            default ->
                draft.settledBy("Read the strength with a strip and correct the entries: --strength \"3 ppm\".")
                        .says(outcome, "Wash water with chlorine whose strength is not recorded in ppm: " + read + ".");
        };
    }
}

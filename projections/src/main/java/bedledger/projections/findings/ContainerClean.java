package bedledger.projections.findings;

import bedledger.language.Containers;
import bedledger.language.Harvesting;
import bedledger.language.LotId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Used containers held nothing that could harm the produce, or were cleaned: 7 CFR 205.272(b). */
record ContainerClean(RuleSheet sheet) implements Rule {
    private record Answer(Outcome outcome, String words) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<String, List<Done<Harvesting.LotPacked>>> alike = new TreeMap<>();
        inquiry.done(Harvesting.LotPacked.class).stream()
                .filter(done -> done.fact().containers() == Containers.USED)
                .forEach(done -> alike.computeIfAbsent(subject(inquiry, done), key -> new ArrayList<>())
                        .add(done));
        return alike.values().stream().map(all -> finding(inquiry, all)).toList();
    }

    private static String kind(Harvesting.LotPacked packed) {
        return packed.into() == null ? "containers" : packed.into();
    }

    private static String subject(Inquiry inquiry, Done<Harvesting.LotPacked> done) {
        String held = done.fact().heldBefore();
        return "used " + kind(done.fact()) + (held == null ? "" : " that held " + held) + " in "
                + done.day().getYear() + " " + answer(inquiry, done).outcome();
    }

    private static Answer answer(Inquiry inquiry, Done<Harvesting.LotPacked> done) {
        String held = done.fact().heldBefore();
        if (held == null) {
            return new Answer(Outcome.INCOMPLETE, "what they held before is not recorded");
        }
        boolean treated = Said.TREATED_CONTAINER.in(held);
        if (!treated && Said.OWN_OR_ORGANIC.in(held)) {
            return new Answer(Outcome.MET, "they held " + held + " before");
        }
        List<Done<Harvesting.EquipmentCleaned>> cleaned = inquiry.done(Harvesting.EquipmentCleaned.class).stream()
                .filter(clean -> !clean.day().isAfter(done.day()))
                .filter(clean -> Said.CONTAINER.in(clean.fact().what()))
                .toList();
        if (cleaned.isEmpty()) {
            return new Answer(
                    treated ? Outcome.NOT_MET : Outcome.INCOMPLETE,
                    "they held " + held + ", and no cleaning is recorded");
        }
        Done<Harvesting.EquipmentCleaned> last = cleaned.get(cleaned.size() - 1);
        boolean ofThese =
                cleaned.stream().anyMatch(clean -> isAfter(held, clean.fact().after()));
        return new Answer(
                treated ? Outcome.ASK : ofThese ? Outcome.MET : Outcome.INCOMPLETE,
                "they held " + held + ", and containers were cleaned on " + last.day()
                        + (ofThese ? "" : afterWhat(last.fact().after())));
    }

    /** Whether a cleaning is recorded as one after what the containers held. */
    private static boolean isAfter(String held, @Nullable String after) {
        String was = held.strip().toLowerCase(Locale.ROOT);
        String then = after == null ? "" : after.strip().toLowerCase(Locale.ROOT);
        return !then.isEmpty() && !was.contains("unknown") && (then.contains(was) || was.contains(then));
    }

    private static String afterWhat(@Nullable String after) {
        return after == null
                ? "; whether after that is not recorded"
                : " after " + after + "; no cleaning after that is recorded";
    }

    private Finding finding(Inquiry inquiry, List<Done<Harvesting.LotPacked>> all) {
        Done<Harvesting.LotPacked> first = all.get(0);
        Answer answer = answer(inquiry, first);
        String held = first.fact().heldBefore();
        List<LotId> lots =
                all.stream().map(done -> done.fact().lot()).distinct().toList();
        return new Draft(
                        sheet,
                        inquiry,
                        "used " + kind(first.fact()) + (held == null ? "" : " that held " + held),
                        first.day())
                .lots(lots)
                .restsOn(all.stream().map(Done::number).toList())
                .settledBy(settles(answer.outcome()))
                .says(
                        answer.outcome(),
                        Wording.capital(Wording.lots(lots)) + " packed into used " + kind(first.fact()) + ", "
                                + all.stream()
                                        .map(done -> done.day().toString())
                                        .distinct()
                                        .collect(Collectors.joining(", "))
                                + ": " + answer.words() + ".");
    }

    private static String settles(Outcome outcome) {
        return switch (outcome) {
            case MET -> "";
            case INCOMPLETE ->
                "Correct the packing with --held-before \"…\", or enter the cleaning: did clean --what crates --how \"…\" --after"
                        + " \"what they held\".";
            case ASK -> "Ask the certifier whether that cleaning is enough for containers that held such a thing.";
            case NOT_MET -> "Take such containers out of use, and ask the certifier what becomes of the lots.";
        };
    }
}

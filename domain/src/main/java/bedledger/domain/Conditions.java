package bedledger.domain;

import bedledger.language.Condition;
import bedledger.language.Entry;
import bedledger.language.Oversight;
import bedledger.language.Problem;
import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Holds the answer to a condition against the inspection it names: a condition nobody set cannot be answered. */
final class Conditions {
    static List<Problem> problems(Entry entry, LongFunction<@Nullable Entry> byNumber) {
        if (!(entry.fact() instanceof Oversight.ConditionAnswered answer)) {
            return List.of();
        }
        Entry named = byNumber.apply(answer.inspection());
        if (named == null || !(named.fact() instanceof Oversight.InspectionHeld held)) {
            return List.of(new Problem(
                    "inspection",
                    "#" + answer.inspection(),
                    "that entry is no inspection",
                    "find its number with: bedledger entry; an inspection is entered with: did note-inspection"));
        }
        return held.conditions().stream().anyMatch(condition -> condition.id().equals(answer.condition()))
                ? List.of()
                : List.of(new Problem(
                        "condition",
                        answer.condition(),
                        "inspection #" + answer.inspection() + " has no such condition; it has " + names(held),
                        "check its name, or correct the inspection"));
    }

    private static String names(Oversight.InspectionHeld held) {
        return held.conditions().isEmpty()
                ? "none"
                : held.conditions().stream().map(Condition::id).collect(Collectors.joining(", "));
    }

    private Conditions() {}
}

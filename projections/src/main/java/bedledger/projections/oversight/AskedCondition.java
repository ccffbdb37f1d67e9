package bedledger.projections.oversight;

import bedledger.language.ActId;
import bedledger.language.Condition;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Oversight;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A condition of an inspection, and what was done about it.
 *
 * @param inspection the entry in force that sets it
 * @param answers the entries that answer it, in the order of the work; an answer may name the inspection by the number it had before a
 *     correction
 */
public record AskedCondition(Entry inspection, Condition condition, List<Entry> answers) {
    public AskedCondition {
        answers = List.copyOf(answers);
    }

    /** Every condition in force by the end of a day, in the order of the inspections. */
    public static List<AskedCondition> of(Farm farm, LocalDate day) {
        Map<Long, ActId> acts = new HashMap<>();
        farm.written().forEach(entry -> acts.put(entry.number(), entry.act()));
        List<Entry> answers = farm.ofKind(Oversight.ConditionAnswered.class).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(day))
                .toList();
        return farm.ofKind(Oversight.InspectionHeld.class).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(day))
                .flatMap(entry -> ((Oversight.InspectionHeld) entry.fact())
                        .conditions().stream()
                                .map(condition -> new AskedCondition(
                                        entry,
                                        condition,
                                        answers.stream()
                                                .filter(answer -> answers(answer, entry, condition, acts))
                                                .toList())))
                .toList();
    }

    private static boolean answers(Entry entry, Entry inspection, Condition condition, Map<Long, ActId> acts) {
        Oversight.ConditionAnswered answer = (Oversight.ConditionAnswered) entry.fact();
        return answer.condition().equals(condition.id()) && inspection.act().equals(acts.get(answer.inspection()));
    }

    public boolean isAnswered() {
        return !answers.isEmpty();
    }

    /** Whether an answer says that the certifier has accepted it. */
    public boolean isAccepted() {
        return answers.stream()
                .anyMatch(entry -> Boolean.TRUE.equals(((Oversight.ConditionAnswered) entry.fact()).accepted()));
    }
}

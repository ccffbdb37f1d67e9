package bedledger.projections.due;

import bedledger.projections.due.DueItem.Kind;
import bedledger.projections.oversight.AskedCondition;
import java.util.List;
import java.util.stream.Stream;

/** What an inspection asked for and nobody has answered. */
final class Conditions {
    static Stream<DueItem> of(Asked asked) {
        return AskedCondition.of(asked.farm(), asked.on()).stream()
                .filter(condition -> !condition.isAnswered())
                .map(condition -> item(asked, condition));
    }

    private static DueItem item(Asked asked, AskedCondition open) {
        boolean late = asked.on().isAfter(open.condition().due());
        return new DueItem(
                Kind.DO,
                open.condition().due(),
                "condition " + open.condition().id(),
                List.of(),
                "condition " + open.condition().id() + " of the inspection of "
                        + open.inspection().head().doneOn() + ", by "
                        + open.condition().due() + ": "
                        + open.condition().words(),
                late ? "It is past its day; tell the certifier that it is late." : "",
                List.of(open.inspection().number()),
                "did answer-condition " + open.condition().id() + " --inspection "
                        + open.inspection().number() + " --how \"WHAT WAS DONE\" --evidence \"WHERE KEPT\"",
                asked.rule("inspection-conditions")
                        .map(rule -> rule.sheet().citation())
                        .orElse("the inspection"));
    }

    private Conditions() {}
}

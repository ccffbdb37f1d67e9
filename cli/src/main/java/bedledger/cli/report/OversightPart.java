package bedledger.cli.report;

import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Oversight;
import bedledger.projections.oversight.AskedCondition;
import java.util.List;

/** Training, mishaps, inspections with their conditions and what was answered, samples. */
record OversightPart(Asked asked, EntryTables tables) {
    static final List<Class<? extends Fact>> KINDS = List.of(
            Oversight.Trained.class,
            Oversight.MishapReported.class,
            Oversight.InspectionHeld.class,
            Oversight.ConditionAnswered.class,
            Oversight.SampleTaken.class,
            Oversight.SampleReported.class);

    Table training() {
        return tables.mixed(
                "table-training",
                "Who was trained in what",
                "No training is on record.",
                asked.ofKinds(List.of(Oversight.Trained.class)));
    }

    Table mishaps() {
        return tables.ofKind(
                "table-mishaps",
                "Mishaps with produce, tools, crates and rooms",
                "No mishap is on record.",
                Oversight.MishapReported.class);
    }

    Table inspections() {
        return tables.ofKind(
                "table-inspections", "Inspections", "No inspection is on record.", Oversight.InspectionHeld.class);
    }

    Table conditions() {
        return Table.of(
                "table-conditions",
                "Conditions of inspections, and what was done about each",
                "No condition is on record.",
                List.of("condition", "due", "what is asked", "answered", "entries"),
                AskedCondition.of(asked.farm(), asked.day()).stream()
                        .map(this::row)
                        .toList());
    }

    private Row row(AskedCondition condition) {
        boolean late = condition.condition().due().isBefore(asked.day());
        List<Phrase> answers = condition.answers().stream().map(this::answer).toList();
        return Row.of(
                Cell.of(condition.condition().id()).asHeader(),
                Cell.whole(condition.condition().due().toString()),
                Cell.of(condition.condition().words()),
                answers.isEmpty()
                        ? Cell.of(late ? "not answered, and the day is past" : "not answered yet")
                        : Cell.of(answers),
                Cell.of(asked.links()
                        .entries(java.util.stream.Stream.concat(
                                        java.util.stream.Stream.of(condition.inspection()),
                                        condition.answers().stream())
                                .map(Entry::number)
                                .toList())));
    }

    private Phrase answer(Entry entry) {
        Oversight.ConditionAnswered answer = (Oversight.ConditionAnswered) entry.fact();
        String accepted = answer.accepted() == null
                ? ""
                : answer.accepted() ? "; accepted by the certifier" : "; not accepted by the certifier";
        return Phrase.of(entry.head().doneOn() + " " + answer.how()
                + (answer.evidence() == null ? "" : "; " + answer.evidence()) + accepted);
    }

    Table samples() {
        return tables.mixed(
                "table-samples",
                "Samples taken, and what was found in them",
                "No sample is on record.",
                asked.ofKinds(List.of(Oversight.SampleTaken.class, Oversight.SampleReported.class)));
    }
}

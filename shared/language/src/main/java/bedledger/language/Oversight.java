package bedledger.language;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Training, mishaps, inspections and what follows from them. */
public sealed interface Oversight extends Fact {

    @Act(
            word = "train",
            name = "people.trained",
            help = "Enter who was shown or taught what.",
            example = "did train crew-1 crew-2 --topic \"flail mower: guards, stop before clearing\" --trainer owner")
    record Trained(
            @Asks(value = "who was trained, by short id", bare = true)
            List<PersonId> who,

            @Asks("in what") String topic,
            @Asks("by whom") @Nullable String trainer)
            implements Oversight {}

    @Act(
            word = "report-mishap",
            name = "mishap.reported",
            help = "Something happened to produce, tools, crates or rooms: a leak, broken glass, a mix-up.",
            example =
                    "did report-mishap PA-1012 --what \"oil dripped on two crates\" --action \"both crates thrown away\"")
    record MishapReported(
            @Asks(value = "the lots concerned", bare = true, optional = true)
            List<LotId> lots,

            @Asks("what happened") String what,

            @Asks("the tool, machine, crate or room concerned") @Nullable
            String thing,

            @Asks("what was done about it") @Nullable String action,

            @Asks("whether the certifier was told") @Nullable
            Boolean certifierTold)
            implements Oversight {
        @Override
        public List<Problem> faults() {
            return lots.isEmpty() && thing == null
                    ? List.of(new Problem(
                            "report-mishap",
                            what,
                            "it does not say what was concerned",
                            "name the lots, or the thing with --thing; beds go with: did report-incident"))
                    : List.of();
        }
    }

    @Act(
            word = "note-inspection",
            name = "inspection.held",
            help = "Enter an inspection, what was found and the conditions that follow.",
            example =
                    "did note-inspection --inspector \"R. Field\" --notice announced --conditions \"C1 by 2026-03-01: file the"
                            + " seed searches\"")
    record InspectionHeld(
            @Asks("who inspected") String inspector,

            @Asks("for whom, as in the certifier") @Nullable String organisation,

            @Asks("announced or unannounced") @Nullable Notice notice,

            @Asks("what was looked at and found") @Nullable String findings,

            @Asks(value = "NAME by DAY: what is asked; apart by semicolons", optional = true)
            List<Condition> conditions)
            implements Oversight {
        @Override
        public List<Problem> faults() {
            boolean twice = conditions.stream().map(Condition::id).distinct().count() < conditions.size();
            return twice
                    ? List.of(new Problem(
                            "conditions",
                            conditions.toString(),
                            "two conditions have one name",
                            "give each a name of its own: C1, C2 …"))
                    : List.of();
        }
    }

    @Act(
            word = "answer-condition",
            name = "condition.answered",
            help = "Say what was done about a condition of an inspection.",
            example = "did answer-condition C1 --inspection 12 --how \"searches filed\" --evidence \"folder 3\"")
    record ConditionAnswered(
            @Asks(value = "the condition's name", bare = true)
            String condition,

            @Asks("the number of the inspection's entry") long inspection,
            @Asks("what was done") String how,

            @Asks("what shows it, and where it is kept") @Nullable
            String evidence,

            @Asks("yes once the certifier has accepted it") @Nullable
            Boolean accepted)
            implements Oversight {}

    @Act(
            word = "take-sample",
            name = "sample.taken",
            help = "Enter a sample that was taken for a test, as by an inspector for residues.",
            example = "did take-sample S-1 --beds N1 --of leaves --taken-by \"R. Field\" --purpose \"residue test\"")
    record SampleTaken(
            @Asks(value = "the name on the sample", bare = true)
            SampleId sample,

            @Asks(value = "the beds it came from", optional = true)
            List<BedId> beds,

            @Asks(value = "the lots it came from", optional = true)
            List<LotId> lots,

            @Asks("leaves, roots, soil, water …") @Nullable String of,

            @Asks("who took it") @Nullable String takenBy,
            @Asks("what for") @Nullable String purpose)
            implements Oversight {}

    @Act(
            word = "sample-result",
            name = "sample.reported",
            help = "Enter what a laboratory found in a sample.",
            example =
                    "did sample-result S-1 --result \"nothing above 0.01 mg/kg\" --detected no --laboratory \"Plain Lab\"")
    record SampleReported(
            @Asks(value = "the name on the sample", bare = true)
            SampleId sample,

            @Asks("what was found, as the laboratory wrote it")
            String result,

            @Asks("yes if anything prohibited was found") @Nullable
            Boolean detected,

            @Asks("which laboratory") @Nullable String laboratory,

            @Asks("the report, and where it is kept") @Nullable
            String report)
            implements Oversight {}
}

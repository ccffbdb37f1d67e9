package bedledger.projections.gaps;

import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Oversight;
import bedledger.language.SampleId;
import bedledger.projections.gaps.Gap.Topic;
import bedledger.projections.oversight.AskedCondition;
import java.util.List;
import java.util.stream.Stream;

/** Training, open conditions, samples without a result, and a period that nobody signed off. */
final class OversightGaps {
    static Stream<Gap> of(Looked looked) {
        return Stream.of(training(looked), conditions(looked), samples(looked), signOff(looked))
                .flatMap(gaps -> gaps);
    }

    private static Stream<Gap> training(Looked looked) {
        return looked.within(Oversight.Trained.class).isEmpty()
                ? Stream.of(new Gap(
                        Topic.PEOPLE,
                        "training",
                        "Nothing is written of anyone being trained from " + looked.from() + " to " + looked.day()
                                + ".",
                        "did train PEOPLE --topic \"WHAT\" --trainer \"WHO\" --on DATE",
                        List.of()))
                : Stream.empty();
    }

    private static Stream<Gap> conditions(Looked looked) {
        return AskedCondition.of(looked.farm(), looked.day()).stream()
                .filter(condition -> !condition.isAnswered())
                .map(condition -> new Gap(
                        Topic.PEOPLE,
                        "condition " + condition.condition().id() + " of inspection #"
                                + condition.inspection().number(),
                        "It is not answered; it is due by "
                                + condition.condition().due() + ": "
                                + condition.condition().words() + ".",
                        "did answer-condition " + condition.condition().id() + " --inspection "
                                + condition.inspection().number()
                                + " --how \"WHAT WAS DONE\" --evidence \"WHERE KEPT\"",
                        List.of(condition.inspection().number())));
    }

    private static Stream<Gap> samples(Looked looked) {
        return looked.places(SampleId.class).stream()
                .filter(sample -> looked.entries(sample).stream()
                        .noneMatch(entry -> entry.fact() instanceof Oversight.SampleReported))
                .map(sample -> new Gap(
                        Topic.PEOPLE,
                        "sample " + sample,
                        "It was taken, and no result is recorded.",
                        "did sample-result " + sample + " --result \"RESULT\" --laboratory \"NAME\" --on DATE",
                        Looked.numbers(looked.entries(sample))));
    }

    private static Stream<Gap> signOff(Looked looked) {
        boolean signed = looked.done(BookKeeping.PeriodSignedOff.class).stream()
                .map(Entry::fact)
                .map(BookKeeping.PeriodSignedOff.class::cast)
                .anyMatch(period ->
                        !period.from().isAfter(looked.from()) && !period.to().isBefore(looked.day()));
        return signed
                ? Stream.empty()
                : Stream.of(new Gap(
                        Topic.RECORD,
                        looked.from() + " to " + looked.day(),
                        "Nobody has signed this period off.",
                        "did sign-off --from " + looked.from() + " --to " + looked.day(),
                        List.of()));
    }

    private OversightGaps() {}
}

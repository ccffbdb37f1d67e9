package bedledger.projections.due;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.MulchKind;
import bedledger.language.Step;
import bedledger.language.Words;
import bedledger.projections.due.DueItem.Kind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Plastic mulch that still lies where the crop in it has ended. */
final class Mulches {
    static Stream<DueItem> of(Asked asked) {
        return asked.beds().stream()
                .flatMap(bed -> asked.state(bed).mulches().stream()
                        .filter(Mulches::comesOff)
                        .flatMap(laid ->
                                cropEnded(asked, bed, laid).stream().map(ended -> item(asked, bed, laid, ended))));
    }

    /** Film made to rot is worked in, as far as it may be used at all. */
    private static boolean comesOff(BedState.Laid laid) {
        MulchKind kind = laid.mulch();
        return kind != null && kind.synthetic() && kind != MulchKind.BIODEGRADABLE_FILM;
    }

    /** The entry with which the bed was left without a crop while this mulch lay, if nothing was planted since. */
    private static Optional<Step<BedState>> cropEnded(Asked asked, BedId bed, BedState.Laid laid) {
        if (!asked.state(bed).crops().isEmpty()) {
            return Optional.empty();
        }
        return asked.farm().bed(bed).steps().stream()
                .filter(step -> asked.happened(step.entry()))
                .filter(step -> step.after().mulches().contains(laid)
                        && !step.before().crops().isEmpty()
                        && step.after().crops().isEmpty())
                .reduce((earlier, later) -> later);
    }

    private static DueItem item(Asked asked, BedId bed, BedState.Laid laid, Step<BedState> ended) {
        MulchKind kind = java.util.Objects.requireNonNull(laid.mulch());
        return new DueItem(
                Kind.DO,
                ended.entry().head().doneOn(),
                bed + " mulch",
                List.of(bed),
                "the " + Words.of(kind).replace('-', ' ') + " mulch on " + bed
                        + " is to come off: the crop in it ended on "
                        + ended.entry().head().doneOn(),
                "",
                List.of(laid.entry(), ended.entry().number()),
                "did unmulch " + bed + " --on DATE",
                asked.rule("mulch-removed").map(rule -> rule.sheet().citation()).orElse(DueItem.PRACTICE));
    }

    private Mulches() {}
}

package bedledger.cli.read;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.nitrogen.Following;
import bedledger.projections.nitrogen.OtherWay;
import bedledger.projections.nitrogen.Release;
import bedledger.projections.nitrogen.Uncaught;
import bedledger.projections.returned.Sum;
import java.util.Collection;
import java.util.Optional;

/** A figure that is summed over pieces that went back, kg N; what was hauled off to the last leaf is nothing, not unknown. */
public enum ReleaseFigure {
    NITROGEN("in it"),
    FREED("set free"),
    TO_THE_NEXT_CROP("to the next crop's end"),
    COVER_CROP_LINE("PNW 636"),
    AMENDMENTS("RB209"),
    IN_THE_END("in the end"),
    ON_LEAKY_DAYS("not caught"),
    UNDER_TARP("under a tarp");

    private final String words;

    ReleaseFigure(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    private boolean counts(Release release) {
        return switch (this) {
            case NITROGEN -> true;
            case AMENDMENTS -> release.isAmendment();
            case TO_THE_NEXT_CROP ->
                !release.isAmendment() && release.following().isPresent();
            case COVER_CROP_LINE ->
                !release.isAmendment() && release.piece().kind().isShoots();
            case FREED, IN_THE_END, ON_LEAKY_DAYS, UNDER_TARP -> !release.isAmendment();
        };
    }

    private Optional<Estimate> of(Release release) {
        return switch (this) {
            case NITROGEN -> release.nitrogen();
            case FREED -> release.freed();
            case TO_THE_NEXT_CROP -> release.following().flatMap(ReleaseFigure::together);
            case COVER_CROP_LINE, AMENDMENTS -> release.otherWay().map(OtherWay::kilograms);
            case IN_THE_END -> release.inTheEnd();
            case ON_LEAKY_DAYS -> release.uncaught().flatMap(Uncaught::onLeakyDays);
            case UNDER_TARP -> release.uncaught().flatMap(Uncaught::underTarp);
        };
    }

    /** From the return to the end of the crop planted next, or so far while it stands. */
    private static Optional<Estimate> together(Following next) {
        return next.before().flatMap(one -> next.during().map(one::plus));
    }

    /** The sum over some pieces. */
    public Sum of(Collection<Release> releases) {
        return Sum.of(releases.stream().filter(this::counts).map(this::of).toList());
    }
}

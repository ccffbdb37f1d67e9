package bedledger.language;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What each kind of act does to one bed, and what cannot be done to it. */
final class BedFold implements PlaceFold<BedState> {
    private static final String FOUND =
            "enter what was forgotten (did %s %s --on DATE), correct the earlier entry, or write what was there:"
                    + " did found %s --on DATE %s";
    /** More than any crop gives in one pick: a mistyped figure or unit (judgement; a year of tunnel tomatoes stays below 80 kg/m²). */
    private static final double MOST_PER_SQUARE_METRE = 100;

    private final BedId bed;
    private final BiFunction<BedId, Entry, BedState> parentBefore;

    /** {@code parentBefore} gives the state in which a split found the bed that was split. */
    BedFold(BedId bed, BiFunction<BedId, Entry, BedState> parentBefore) {
        this.bed = bed;
        this.parentBefore = parentBefore;
    }

    @Override
    public BedState start() {
        return BedState.UNKNOWN;
    }

    @Override
    public Optional<Misfit> misfit(BedState state, Entry entry) {
        Fact fact = entry.fact();
        boolean lays = fact instanceof Land.BedLaidOut
                || (fact instanceof Land.BedSplit split && split.into().contains(bed));
        if (lays) {
            return refuse(
                    state.laidOut() != null,
                    "the bed is laid out already, since " + state.laidOut(),
                    "give the new bed another id, or re-measure this one: did re-measure " + bed);
        }
        if (state.laidOut() == null) {
            return refuse(
                    true,
                    "there is no such bed on " + entry.head().doneOn(),
                    "check the bed and the day; a new bed is entered with: did lay-out " + bed
                            + " --field FIELD --length 30m --width 0.75m --on DATE");
        }
        if (state.retired() != null) {
            return refuse(true, "the bed is no longer worked since " + state.retired(), "check the bed and the day");
        }
        return content(state, fact);
    }

    private Optional<Misfit> content(BedState state, Fact fact) {
        if (fact instanceof BedWork.Tarped) {
            return refuse(
                    state.tarp() != null,
                    "a tarp lies on it already, since " + since(state.tarp()),
                    "enter the lifting first: did untarp " + bed + " --on DATE");
        }
        if (fact instanceof BedWork.TarpLifted || fact instanceof Observation.TarpChecked || foldedBack(fact)) {
            return refuse(
                    state.tarp() == null, "no tarp lies on it on that day", found("tarp", "--tarp \"silage film\""));
        }
        if (fact instanceof BedWork.MulchRemoved removed) {
            boolean lies =
                    state.mulches().stream().anyMatch(laid -> removed.kind() == null || laid.mulch() == removed.kind());
            return refuse(!lies, "no such mulch lies on it on that day", found("mulch", "--mulch straw"));
        }
        if (fact instanceof BedWork.DripPulled) {
            return refuse(
                    state.drip() == null, "no drip lines lie on it on that day", found("lay-drip", "--drip-lines 2"));
        }
        if (fact instanceof Care.RowCoverOff) {
            return refuse(
                    state.rowCover() == null, "no row cover lies over it on that day", found("cover", "--row-cover"));
        }
        if (fact instanceof Planting.CoverEnded) {
            return refuse(
                    !state.hasCover(),
                    "no cover crop stands in it on that day",
                    found("sow-cover", "--cover-crop rye"));
        }
        if (fact instanceof Harvesting.Harvested harvested) {
            return grows(state, harvested.crop()).or(() -> tooMuch(state, harvested));
        }
        return crop(fact).flatMap(crop -> grows(state, crop));
    }

    private static Optional<CropName> crop(Fact fact) {
        if (fact instanceof Planting.Staked staked) {
            return Optional.of(staked.crop());
        }
        return fact instanceof Planting.CropFinished finished ? Optional.of(finished.crop()) : Optional.empty();
    }

    private static boolean foldedBack(Fact fact) {
        return fact instanceof BedWork.Harrowed harrowed && Boolean.TRUE.equals(harrowed.tarpFoldedBack());
    }

    private Optional<Misfit> grows(BedState state, CropName crop) {
        String standing = state.crops().isEmpty()
                ? "nothing stands in it"
                : "what stands in it is "
                        + String.join(
                                ", ",
                                state.crops().stream().map(s -> s.crop().name()).toList());
        return refuse(
                !state.grows(crop),
                "no " + crop + " stands in it on that day; " + standing,
                found("sow", "--crop \"" + crop + "\""));
    }

    private Optional<Misfit> tooMuch(BedState state, Harvesting.Harvested harvested) {
        double area = state.squareMetres() * harvested.beds().size();
        boolean tooMuch = harvested.quantity().isWeight()
                && area > 0
                && harvested.quantity().kilograms() > MOST_PER_SQUARE_METRE * area;
        return refuse(
                tooMuch,
                harvested.quantity() + " off about " + Math.round(area) + " m² is more than any crop gives in one pick",
                "check the number and the unit");
    }

    private String found(String forgotten, String what) {
        return FOUND.formatted(forgotten, bed, bed, what);
    }

    private static @Nullable LocalDate since(BedState.@Nullable Laid laid) {
        return laid == null ? null : laid.since();
    }

    private Optional<Misfit> refuse(boolean when, String why, String wayOut) {
        return when ? Optional.of(new Misfit(bed, why, wayOut)) : Optional.empty();
    }

    @Override
    public BedState after(BedState state, Entry entry) {
        return BedChange.of(bed, state, entry, parentBefore);
    }

    static List<BedState.Laid> add(List<BedState.Laid> laid, BedState.Laid one) {
        return Stream.concat(laid.stream(), Stream.of(one)).toList();
    }
}

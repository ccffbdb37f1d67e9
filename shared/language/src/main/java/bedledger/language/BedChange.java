package bedledger.language;

import java.time.LocalDate;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/** The state a fact leaves a bed in; a kind of act that is not named here changes nothing in or on the bed. */
final class BedChange {
    static BedState of(BedId bed, BedState state, Entry entry, BiFunction<BedId, Entry, BedState> parentBefore) {
        Fact fact = entry.fact();
        if (fact instanceof Land land) {
            return land(bed, state, entry, land, parentBefore);
        }
        if (fact instanceof Planting planting) {
            return planting(state, entry, planting);
        }
        if (fact instanceof Harvesting.Harvested harvested) {
            return Boolean.TRUE.equals(harvested.last()) ? state.without(harvested.crop()) : state;
        }
        return work(state, entry, fact);
    }

    private static BedState land(
            BedId bed, BedState state, Entry entry, Land land, BiFunction<BedId, Entry, BedState> parentBefore) {
        LocalDate day = entry.head().doneOn();
        if (land instanceof Land.BedLaidOut laid) {
            return state.outline(day, laid.field(), laid.length(), laid.width());
        }
        if (land instanceof Land.BedRemeasured measured && state.laidOut() != null && state.field() != null) {
            return state.outline(state.laidOut(), state.field(), measured.length(), measured.width());
        }
        if (land instanceof Land.BedSplit split) {
            return split.bed().equals(bed)
                    ? state.retired(day)
                    : part(bed, split, parentBefore.apply(split.bed(), entry));
        }
        if (land instanceof Land.BedRenamed renamed) {
            return state.called(renamed.called());
        }
        if (land instanceof Land.BedRetired) {
            return state.retired(day);
        }
        return land instanceof Land.Found found ? found(state, entry, found) : state;
    }

    private static BedState part(BedId bed, Land.BedSplit split, BedState parent) {
        int which = split.into().indexOf(bed);
        return which < split.lengths().size() ? parent.length(split.lengths().get(which)) : parent;
    }

    private static BedState found(BedState state, Entry entry, Land.Found found) {
        BedState after = Boolean.TRUE.equals(found.nothing()) ? state.bare() : state;
        if (found.crop() != null) {
            after = after.with(stand(found.crop(), false, entry));
        }
        if (found.coverCrop() != null) {
            after = after.with(stand(found.coverCrop(), true, entry));
        }
        if (found.tarp() != null) {
            after = after.tarp(laid(found.tarp(), entry, null));
        }
        if (found.mulch() != null) {
            after = after.mulches(BedFold.add(after.mulches(), laid(Words.of(found.mulch()), entry, found.mulch())));
        }
        if (found.dripLines() != null) {
            after = after.drip(laid(found.dripLines() + " lines", entry, null));
        }
        return Boolean.TRUE.equals(found.rowCover()) ? after.rowCover(laid("row cover", entry, null)) : after;
    }

    private static BedState planting(BedState state, Entry entry, Planting planting) {
        if (planting instanceof Planting.Sown sown) {
            return state.with(stand(sown.crop(), false, entry));
        }
        if (planting instanceof Planting.Transplanted set) {
            return state.with(stand(set.crop(), false, entry));
        }
        if (planting instanceof Planting.CoverSown cover) {
            return state.with(stand(cover.crop(), true, entry));
        }
        if (planting instanceof Planting.Staked staked) {
            return staked.clearOfSoil() == null ? state : state.staked(staked.crop(), staked.clearOfSoil());
        }
        if (planting instanceof Planting.CoverEnded) {
            return state.withoutCover();
        }
        return planting instanceof Planting.CropFinished finished ? state.without(finished.crop()) : state;
    }

    private static BedState work(BedState state, Entry entry, Fact fact) {
        if (endsWhatStands(fact)) {
            return state.crops(java.util.List.of());
        }
        if (fact instanceof BedWork.Tarped tarped) {
            return state.tarp(laid(tarped.material() == null ? "tarp" : tarped.material(), entry, null));
        }
        if (fact instanceof BedWork.TarpLifted) {
            return state.tarp(null);
        }
        if (fact instanceof BedWork.Mulched mulched) {
            return state.mulches(BedFold.add(state.mulches(), laid(Words.of(mulched.kind()), entry, mulched.kind())));
        }
        if (fact instanceof BedWork.MulchRemoved removed) {
            return state.mulches(state.mulches().stream()
                    .filter(laid -> removed.kind() != null && laid.mulch() != removed.kind())
                    .toList());
        }
        if (fact instanceof BedWork.DripLaid drip) {
            return state.drip(laid(drip.lines() == null ? "drip lines" : drip.lines() + " lines", entry, null));
        }
        if (fact instanceof BedWork.DripPulled) {
            return state.drip(null);
        }
        if (fact instanceof Care.RowCoverOn on) {
            return state.rowCover(laid(on.material() == null ? "row cover" : on.material(), entry, null));
        }
        return fact instanceof Care.RowCoverOff ? state.rowCover(null) : state;
    }

    /** Flailing, tilling or harrowing ends whatever stands in the bed. */
    static boolean endsWhatStands(Fact fact) {
        return fact instanceof BedWork.ResidueFlailed
                || fact instanceof BedWork.Tilled
                || fact instanceof BedWork.Harrowed;
    }

    private static BedState.Stand stand(CropName crop, boolean cover, Entry entry) {
        return new BedState.Stand(crop, cover, entry.head().doneOn(), entry.number(), false);
    }

    private static BedState.Laid laid(String what, Entry entry, @Nullable MulchKind mulch) {
        return new BedState.Laid(what, entry.head().doneOn(), entry.number(), mulch);
    }

    private BedChange() {}
}

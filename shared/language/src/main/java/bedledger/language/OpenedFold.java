package bedledger.language;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Folds a place that one kind of fact opens and that must be open before anything else happens to it. */
final class OpenedFold implements PlaceFold<Opened> {
    private final Place place;
    private final Predicate<Fact> opens;
    private final String missing;
    private final String twice;
    private final String wayOut;

    private OpenedFold(Place place, Predicate<Fact> opens, String missing, String twice, String wayOut) {
        this.place = place;
        this.opens = opens;
        this.missing = missing;
        this.twice = twice;
        this.wayOut = wayOut;
    }

    static OpenedFold field(FieldId field) {
        return new OpenedFold(
                field,
                Land.FieldRegistered.class::isInstance,
                "there is no such field on that day",
                "the field is registered already",
                "check its name and the day; a new field is entered with: did register-field \"" + field
                        + "\" --gross 0.05ha");
    }

    static OpenedFold pile(PileId pile) {
        return new OpenedFold(
                pile,
                Fertility.PileBuilt.class::isInstance,
                "there is no such pile on that day",
                "a pile of that name is there already",
                "check its name and the day; a new pile is entered with: did build-pile " + pile);
    }

    static OpenedFold lot(LotId lot) {
        return new OpenedFold(
                lot,
                fact -> LotAccount.opens(lot, fact),
                "no such lot was harvested by that day",
                "a lot of that name is there already, of " + lot.year(),
                "check the lot and the day; what lay in store before is entered with: did found-lot " + lot
                        + " --crop CROP --quantity 10kg");
    }

    static OpenedFold trays(TrayId trays) {
        return new OpenedFold(
                trays,
                Planting.TraysSown.class::isInstance,
                "no such trays were sown by that day",
                "trays of that name are there already",
                "check their name and the day; trays are entered with: did sow-trays " + trays
                        + " --crop CROP --seed-lot LOT --on DATE");
    }

    static OpenedFold sample(SampleId sample) {
        return new OpenedFold(
                sample,
                Oversight.SampleTaken.class::isInstance,
                "no such sample was taken by that day",
                "a sample of that name is there already",
                "check its name and the day; a sample is entered with: did take-sample " + sample + " --on DATE");
    }

    @Override
    public Opened start() {
        return Opened.NOT_YET;
    }

    @Override
    public Optional<Misfit> misfit(Opened state, Entry entry) {
        boolean opening = opens.test(entry.fact());
        if (opening == !state.exists()) {
            return Optional.empty();
        }
        return Optional.of(new Misfit(place, opening ? twice : missing, opening ? "give it another name" : wayOut));
    }

    @Override
    public Opened after(Opened state, Entry entry) {
        return state.exists()
                ? new Opened(
                        state.opening(),
                        Stream.concat(state.uses().stream(), Stream.of(entry)).toList())
                : new Opened(entry, state.uses());
    }
}

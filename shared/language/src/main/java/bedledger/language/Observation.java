package bedledger.language;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What was looked at and measured. */
public sealed interface Observation extends Fact {

    @Act(
            word = "quadrats",
            name = "residue.quadrats-cut",
            help = "Weigh the residue cut in frames of known size.",
            example = "did quadrats N1 610g 540g 575g 590g --frame 0.25m2 --dry 14% --when before-flailing",
            caution = Caution.DRYING)
    record QuadratsCut(
            @Asks(value = "the bed", bare = true) BedId bed,

            @Asks(value = "fresh weight in each frame", bare = true)
            List<Mass> weights,

            @Asks("area of the frame") Area frame,

            @Asks("dry share, from a dried sample") @Nullable
            Share dry,

            @Asks("before-flailing, at-flailing or after-flailing") @Nullable
            Cut when,

            @Asks("the crop the residue came from") @Nullable
            CropName crop)
            implements Observation {
        @Override
        public List<Problem> faults() {
            return frame.squareMetres() <= 0
                    ? List.of(new Problem("frame", frame.toString(), "a frame has an area", "write it like 0.25m2"))
                    : List.of();
        }
    }

    @Act(
            word = "check-tarp",
            name = "residue.tarp-checked",
            help = "Lift a corner and look how far the residue has gone.",
            example = "did check-tarp N1 --leaves gone --stalks break-in-hand",
            caution = Caution.TARP)
    record TarpChecked(
            @Asks(value = "the beds", bare = true) List<BedId> beds,

            @Asks("whole, soft, break-in-hand or gone") @Nullable
            Softness leaves,

            @Asks("whole, soft, break-in-hand or gone") @Nullable
            Softness stalks)
            implements Observation {}

    @Act(
            word = "weather",
            name = "weather.noted",
            help = "Note the day's weather.",
            example = "did weather --min 9C --max 21C --rain 4mm")
    record WeatherNoted(
            @Asks("lowest air temperature") @Nullable Temperature min,
            @Asks("highest air temperature") @Nullable Temperature max,
            @Asks("rain") @Nullable Length rain,
            @Asks("in words: frost, hail, wind") @Nullable String seen)
            implements Observation {}
}

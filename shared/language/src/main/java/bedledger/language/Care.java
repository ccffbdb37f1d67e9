package bedledger.language;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Care of the standing crop. */
public sealed interface Care extends Fact {

    @Act(
            word = "irrigate",
            name = "care.irrigated",
            help = "Water beds.",
            example = "did irrigate N1..N4 --source well --depth 12mm")
    record Irrigated(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("where the water came from") @Nullable String source,
            @Asks("how much, as a depth of water") @Nullable Length depth,
            @Asks("or how much over all the beds") @Nullable Volume volume,
            @Asks("drip, overhead or by hand") @Nullable String how)
            implements Care {}

    @Act(
            word = "weed",
            name = "care.weeded",
            help = "Weed beds by hand or hoe.",
            example = "did weed N3 --tool \"wheel hoe\"")
    record Weeded(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("hand, hoe, wheel hoe …") @Nullable String tool)
            implements Care {}

    @Act(
            word = "flame-weed",
            name = "care.flame-weeded",
            help = "Kill weeds with a flame, before or after the crop comes up.",
            example = "did flame-weed N3 --fuel propane --before-emergence",
            caution = Caution.FLAME)
    record FlameWeeded(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("what was burnt") @Nullable String fuel,
            @Asks("before the crop came up") @Nullable Boolean beforeEmergence)
            implements Care {}

    @Act(
            word = "scout",
            name = "care.scouted",
            help = "Look for pests, disease and helpers.",
            example = "did scout N1 --seen \"cabbage worms on 6 of 20 plants\"")
    record Scouted(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("what was seen; 'nothing' counts") String seen,
            @Asks("what was decided") @Nullable String decided)
            implements Care {}

    @Act(
            word = "spray",
            name = "care.sprayed",
            revision = 2,
            help = "Apply a listed product against a pest, disease or weed.",
            example =
                    "did spray N1 --product \"Bt wettable powder\" --target \"cabbage worms\" --tried-first \"row cover, hand"
                            + " picking\" --quantity 20g --pre-harvest-days 0 --re-entry 4h",
            caution = Caution.SPRAY)
    record Sprayed(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("the product, as listed") MaterialName product,
            @Asks("what it was meant for") @Nullable String target,
            @Asks("what was tried first") @Nullable String triedFirst,

            @Asks("product used over all the beds") @Nullable
            Amount quantity,

            @Asks("rate, as on the label") @Nullable String rate,

            @Asks("time before anyone goes back in") @Nullable
            Span reEntry,

            @Asks(value = "days before harvest, as on the label", most = 1000) @Nullable
            Integer preHarvestDays,

            @Asks("the applicator's licence, if one is needed") @Nullable
            String licence,

            @Asks("growth stage of the crop, as BBCH 51, where the label asks") @Nullable
            String growthStage,

            @Asks("wind, and what else of the weather mattered") @Nullable
            String wind)
            implements Care {}

    @Act(
            word = "cover",
            name = "care.row-cover-on",
            help = "Put a row cover or net on.",
            example = "did cover N1 --material net")
    record RowCoverOn(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("fleece, net …") @Nullable String material) implements Care {}

    @Act(word = "uncover", name = "care.row-cover-off", help = "Take the row cover off.", example = "did uncover N1")
    record RowCoverOff(
            @Asks(value = "the beds", bare = true) List<BedId> beds) implements Care {}

    @Act(
            word = "prune",
            name = "care.pruned",
            help = "Prune, sucker, leaf, hill or blanch a crop.",
            example =
                    "did prune N5 --crop tomato --what \"suckers and lower leaves\" --tools \"shears, dipped between beds\"")
    record Pruned(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("the crop") CropName crop,
            @Asks("what was done") String what,

            @Asks("with which tools, and how they were cleaned") @Nullable
            String tools)
            implements Care {}

    @Act(
            word = "release",
            name = "care.helpers-released",
            help = "Release insects, mites or other helpers against a pest.",
            example = "did release N5 --what \"predatory mites\" --against \"spider mites\" --quantity 500pieces")
    record HelpersReleased(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("which helper") String what,
            @Asks("against what") @Nullable String against,
            @Asks("how many, or how much") @Nullable Amount quantity,
            @Asks("from whom") @Nullable String source)
            implements Care {}

    @Act(
            word = "set-trap",
            name = "care.traps-set",
            help = "Set traps, lures or repellents.",
            example = "did set-trap N1..N4 --what \"sticky cards\" --against \"flea beetles\" --traps 8")
    record TrapsSet(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("which trap, lure or repellent") String what,
            @Asks("against what") @Nullable String against,

            @Asks(value = "how many", least = 1) @Nullable Integer traps)
            implements Care {}
}

package bedledger.language;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Sowing, planting, and the end of a crop. */
public sealed interface Planting extends Fact {

    @Act(
            word = "sow",
            name = "crop.sown",
            help = "Sow a crop straight into a bed.",
            example = "did sow N5,N6 --crop carrot --seed-lot PA-4 --per-bed 25g")
    record Sown(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("the crop") CropName crop,
            @Asks("the seed lot") @Nullable SeedLotId seedLot,
            @Asks("seed used over all the beds") @Nullable Amount quantity,
            @Asks("or seed used on each bed") @Nullable Amount perBed,
            @Asks("the variety") @Nullable String variety,

            @Asks(value = "rows on a bed", least = 1, most = 60) @Nullable
            Integer rows)
            implements Planting {
        @Override
        public List<Problem> faults() {
            return OneOf.quantity(quantity, perBed);
        }
    }

    @Act(
            word = "sow-trays",
            name = "trays.sown",
            help = "Sow trays, flats or soil blocks, to be planted out later.",
            example =
                    "did sow-trays LE-0301 --crop leek --seed-lot PO-3 --trays 4 --cells 128 --potting-mix \"Own potting mix\"")
    record TraysSown(
            @Asks(value = "the farm's name for these trays", bare = true)
            TrayId batch,

            @Asks("the crop") CropName crop,
            @Asks("the seed lot") @Nullable SeedLotId seedLot,

            @Asks(value = "how many trays", least = 1) @Nullable
            Integer trays,

            @Asks(value = "cells or blocks in each", least = 1) @Nullable
            Integer cells,

            @Asks("seed used over all of them") @Nullable Amount quantity,

            @Asks("the potting mix, as listed") @Nullable MaterialName pottingMix,

            @Asks("the variety") @Nullable String variety,
            @Asks("where they stand") @Nullable String where)
            implements Planting {}

    @Act(
            word = "pot-up",
            name = "trays.potted-up",
            help = "Set plants of some trays into pots or larger cells; say how many, and how many were thrown away.",
            example =
                    "did pot-up LE-0301 --plants 480 --discarded 32 --into \"9 cm pots\" --potting-mix \"Own potting mix\"")
    record TraysPottedUp(
            @Asks(value = "the trays", bare = true) TrayId batch,

            @Asks(value = "plants potted up", least = 0) @Nullable
            Integer plants,

            @Asks(value = "plants thrown away", least = 0) @Nullable
            Integer discarded,

            @Asks("into what") @Nullable String into,

            @Asks("the potting mix, as listed") @Nullable MaterialName pottingMix,

            @Asks("where they stand now") @Nullable String where)
            implements Planting {}

    @Act(
            word = "transplant",
            name = "crop.transplanted",
            revision = 2,
            help = "Set out plants, your own or bought.",
            example = "did transplant N1,N2 --crop broccoli --origin own --trays BR-0310 --plants 160")
    record Transplanted(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("the crop") CropName crop,
            @Asks("own or bought") @Nullable Origin origin,

            @Asks("the seed lot they were raised from") @Nullable
            SeedLotId seedLot,

            @Asks(value = "own plants: the trays they come from", optional = true)
            List<TrayId> trays,

            @Asks("bought plants: yes if certified organic, no if not") @Nullable
            Boolean organic,

            @Asks("bought plants: a temporary variance, if there is one") @Nullable
            String variance,

            @Asks("bought plants: from whom") @Nullable String supplier,

            @Asks(value = "plants over all the beds", least = 1) @Nullable
            Integer plants,

            @Asks("the variety") @Nullable String variety,

            @Asks(value = "rows on a bed", least = 1, most = 60) @Nullable
            Integer rows)
            implements Planting {}

    @Act(
            word = "stake",
            name = "crop.staked",
            revision = 2,
            help = "Stake, string or trellis a crop; say whether the edible part is kept clear of the soil.",
            example = "did stake N5 --crop tomato --clear-of-soil yes --material \"oak stakes\" --treated-wood no")
    record Staked(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("the crop") CropName crop,

            @Asks("yes if the edible part is kept clear of the soil") @Nullable
            Boolean clearOfSoil,

            @Asks("what stakes, strings or trellis are made of") @Nullable
            String material,

            @Asks("wood in the soil: yes if it is treated, no if not") @Nullable
            Boolean treatedWood,

            @Asks("treated wood: with what") @Nullable String treatedWith)
            implements Planting {}

    @Act(
            word = "thin",
            name = "crop.thinned",
            help = "Thin a crop, or fill its gaps.",
            example = "did thin N5 --crop carrot --spacing 4cm")
    record CropThinned(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("the crop") CropName crop,

            @Asks("distance in the row afterwards") @Nullable
            Length spacing,

            @Asks(value = "plants taken out") @Nullable Integer removed,

            @Asks(value = "plants set into gaps") @Nullable Integer added)
            implements Planting {}

    @Act(
            word = "sow-cover",
            name = "cover.sown",
            help = "Sow a cover crop.",
            example = "did sow-cover N2 --crop \"rye and vetch\" --seed-lot RY-6 --quantity 0.6kg")
    record CoverSown(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("the cover crop or mix") CropName crop,
            @Asks("the seed lot") @Nullable SeedLotId seedLot,
            @Asks("seed used over all the beds") @Nullable Amount quantity,
            @Asks("or seed used on each bed") @Nullable Amount perBed)
            implements Planting {
        @Override
        public List<Problem> faults() {
            return OneOf.quantity(quantity, perBed);
        }
    }

    @Act(
            word = "end-cover",
            name = "cover.ended",
            help = "End a cover crop and say how.",
            example = "did end-cover N2 --how mown --stage flowering",
            caution = Caution.FLAIL)
    record CoverEnded(
            @Asks(value = "the beds", bare = true) List<BedId> beds,

            @Asks("mown, tilled, crimped, tarped, winter-killed, grazed or hauled-off")
            CoverEnd how,

            @Asks("before-flowering, flowering or seed") @Nullable
            Stage stage)
            implements Planting {}

    @Act(
            word = "finish",
            name = "crop.finished",
            help = "Say that a crop is finished without a last harvest.",
            example = "did finish N5 --crop tomato")
    record CropFinished(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("the crop") CropName crop,
            @Asks("why, as in frost or disease") @Nullable String why)
            implements Planting {}
}

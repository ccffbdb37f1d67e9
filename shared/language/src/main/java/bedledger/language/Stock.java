package bedledger.language;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Seed and stock, and the inputs that come onto the farm. */
public sealed interface Stock extends Fact {

    @Act(
            word = "receive-seed",
            name = "seed.received",
            revision = 2,
            help = "Enter seed, planting stock or bought plants as they come in.",
            example =
                    "did receive-seed PA-4 --crop carrot --quantity 100g --supplier \"Hill Seeds\" --organic no --treatment"
                            + " untreated --suppliers-asked 3")
    record SeedReceived(
            @Asks(value = "the farm's name for the lot", bare = true)
            SeedLotId seedLot,

            @Asks("the crop; a mix by its name in the crop table")
            CropName crop,

            @Asks("how much") Amount quantity,
            @Asks("who sold it") @Nullable String supplier,
            @Asks("the supplier's own lot number") @Nullable String supplierLot,

            @Asks("yes if certified organic, no if not") @Nullable
            Boolean organic,

            @Asks("untreated, listed-treatment or other-treatment") @Nullable
            Treatment treatment,

            @Asks("seed, planting-stock or seedlings") @Nullable
            StockForm form,

            @Asks(value = "how many suppliers were asked for organic; 0 if none was", most = 100) @Nullable
            Integer suppliersAsked,

            @Asks("who was asked, when, and what they said") @Nullable
            String search,

            @Asks("certificate number or where it is kept") @Nullable
            String certificate,

            @Asks("receipt or invoice") @Nullable String receipt,

            @Asks("the variety") @Nullable String variety,

            @Asks("yes if it is to stand for years, as asparagus or strawberry") @Nullable
            Boolean perennial,

            @Asks("the supplier's word that it is not genetically engineered, and where it is kept") @Nullable
            String notEngineered)
            implements Stock {}

    @Act(
            word = "list-material",
            name = "material.listed",
            revision = 2,
            help = "List an input with its maker, make-up and proof of approval before it is used.",
            example =
                    "did list-material \"Feather meal 13-0-0\" --maker \"Plain Mills\" --approval \"certifier's letter\"")
    record MaterialListed(
            @Asks(value = "full name and formulation", bare = true)
            MaterialName material,

            @Asks("who makes it") @Nullable String maker,
            @Asks("what is in it") @Nullable String composition,

            @Asks("what it is for: fertility, pest, disease, weed, cleaning, mulch") @Nullable
            String use,

            @Asks("total nitrogen, of fresh weight") @Nullable
            Share nitrogen,

            @Asks("phosphorus (P, not P2O5), of fresh weight") @Nullable
            Share phosphorus,

            @Asks("carbon, of dry weight") @Nullable Share carbon,
            @Asks("dry share of fresh weight") @Nullable Share dry,

            @Asks("who approved it, when, and where the proof is kept") @Nullable
            String approval,

            @Asks("registration or authorisation number, of what is sprayed") @Nullable
            String registration)
            implements Stock {}

    @Act(
            word = "receive-material",
            name = "material.received",
            help = "Enter an input as it comes in.",
            example = "did receive-material \"Feather meal 13-0-0\" --quantity 50kg --receipt 2214")
    record MaterialReceived(
            @Asks(value = "the material, as listed", bare = true)
            MaterialName material,

            @Asks("how much") Amount quantity,
            @Asks("who sold it") @Nullable String supplier,
            @Asks("batch or lot number") @Nullable String batch,
            @Asks("receipt or invoice") @Nullable String receipt)
            implements Stock {}

    @Act(
            word = "test-seed",
            name = "seed.germination-tested",
            help = "Enter how much of a seed lot came up in a test.",
            example = "did test-seed PA-4 --seeds 100 --came-up 86% --days 10")
    record GerminationTested(
            @Asks(value = "the seed lot", bare = true) SeedLotId seedLot,

            @Asks(value = "how many seeds were laid out", least = 1) @Nullable
            Integer seeds,

            @Asks("the share that came up") Share cameUp,

            @Asks(value = "after how many days", most = 365) @Nullable
            Integer days)
            implements Stock {}

    @Act(
            word = "make-mix",
            name = "material.mixed",
            help = "Make a potting mix, or another mix that is listed, out of listed materials and compost.",
            example = "did make-mix \"Own potting mix\" --materials \"Peat moss; Feather meal 13-0-0\" --made 200L")
    record MixMade(
            @Asks(value = "the mix, as listed", bare = true) MaterialName mix,

            @Asks(value = "the listed materials in it, apart by semicolons", optional = true)
            List<MaterialName> materials,

            @Asks("compost in it from this pile") @Nullable PileId pile,
            @Asks("how much was made") @Nullable Amount made,

            @Asks("how much of each went in") @Nullable String recipe)
            implements Stock {}

    @Act(
            word = "count-material",
            name = "material.counted",
            help = "Count, or weigh, all there is left of a listed material.",
            example = "did count-material \"Feather meal 13-0-0\" --quantity 12kg")
    record MaterialCounted(
            @Asks(value = "the material, as listed", bare = true)
            MaterialName material,

            @Asks("how much there is; 0kg if none") Amount quantity,
            @Asks("where") @Nullable String where)
            implements Stock {}

    @Act(
            word = "lose-material",
            name = "material.lost",
            help = "Enter material that was spoiled, spilt, sent back or thrown away.",
            example = "did lose-material \"Feather meal 13-0-0\" --quantity 5kg --cause \"wet bag\" --to compost")
    record MaterialLost(
            @Asks(value = "the material, as listed", bare = true)
            MaterialName material,

            @Asks("how much") Amount quantity,
            @Asks("why: spoiled, spilt, sent back …") String cause,
            @Asks("where it went") @Nullable String to)
            implements Stock {}
}

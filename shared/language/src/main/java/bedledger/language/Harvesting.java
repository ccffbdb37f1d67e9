package bedledger.language;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Harvest, store and what is done after harvest. */
public sealed interface Harvesting extends Fact {

    @Act(
            word = "harvest",
            name = "crop.harvested",
            help = "Harvest a crop into a lot.",
            example = "did harvest N1 --crop leek --quantity 38.5kg")
    record Harvested(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("the crop") CropName crop,
            @Asks("how much") Amount quantity,

            @Asks(value = "the lot's name; it names itself if left out", given = true)
            LotId lot,

            @Asks("how it was weighed: washed, dirty or topped") @Nullable
            Weighed weighed,

            @Asks("the last of it: the crop ends here") @Nullable
            Boolean last,

            @Asks("weight of one of what was counted, if weighed") @Nullable
            Mass each)
            implements Harvesting {}

    @Act(
            word = "found-lot",
            name = "store.lot-found",
            help = "Enter produce that is in the store when the book begins or a gap is closed.",
            example = "did found-lot 2024/ON-0912 --crop onion --quantity 85kg")
    record LotFound(
            @Asks(value = "the lot", bare = true) LotId lot,
            @Asks("the crop") CropName crop,
            @Asks("how much") Amount quantity)
            implements Harvesting {}

    @Act(
            word = "store",
            name = "store.lot-stored",
            help = "Put a lot into a store.",
            example = "did store PA-1012 --where cellar")
    record LotStored(
            @Asks(value = "the lot", bare = true) LotId lot,
            @Asks("where") String where,
            @Asks("how much of it") @Nullable Amount quantity)
            implements Harvesting {}

    @Act(
            word = "count",
            name = "store.counted",
            help = "Count, or weigh, all there is of a crop in store.",
            example = "did count carrot --quantity 29.5kg")
    record StoreCounted(
            @Asks(value = "the crop", bare = true) CropName crop,
            @Asks("how much there is; 0kg if none") Amount quantity,
            @Asks("where") @Nullable String where)
            implements Harvesting {}

    @Act(
            word = "lose",
            name = "store.lot-lost",
            help = "Enter what was culled, rotted, eaten or fed, and where it went.",
            example = "did lose PA-1019=9kg --cause culled --to compost")
    record LotLost(
            @Asks(value = "the lots, each with how much", bare = true)
            List<LotAmount> lots,

            @Asks("why: culled, rotted, eaten at home …") String cause,
            @Asks("where it went") @Nullable String to)
            implements Harvesting {}

    @Act(
            word = "clean",
            name = "equipment.cleaned",
            help = "Clean tools, crates or a wash line.",
            example = "did clean --what \"harvest crates\" --how \"brushed and rinsed\"")
    record EquipmentCleaned(
            @Asks("what was cleaned") String what,
            @Asks("how, and with which product") @Nullable String how,

            @Asks("after what it had been used for") @Nullable
            String after)
            implements Harvesting {}
}

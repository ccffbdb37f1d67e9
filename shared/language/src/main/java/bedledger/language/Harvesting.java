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
            implements Harvesting {
        /** The same pick in another lot. */
        public Harvested in(LotId other) {
            return new Harvested(beds, crop, quantity, other, weighed, last, each);
        }
    }

    @Act(
            word = "look-over",
            name = "harvest.beds-looked-over",
            help = "Look beds over before harvest: droppings, tracks, floods, waiting days.",
            example = "did look-over N1 --droppings no --animals no --decided \"picked\"")
    record BedsLookedOver(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("whether droppings were seen") @Nullable Boolean droppings,

            @Asks("whether animals had been in, or tracks were seen") @Nullable
            Boolean animals,

            @Asks("what else was seen: flood, broken glass, waiting days not over") @Nullable
            String seen,

            @Asks("what was decided: picked, left standing within 1 m …") @Nullable
            String decided)
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
            word = "wash",
            name = "lot.washed",
            help = "Wash lots, and say with which water and sanitizer.",
            example = "did wash PA-1012 --water well --sanitizer \"Peracetic acid 5%\" --strength \"60 ppm\"",
            caution = Caution.SANITIZER)
    record LotsWashed(
            @Asks(value = "the lots", bare = true) List<LotId> lots,
            @Asks("where the water came from") @Nullable String water,
            @Asks("the sanitizer, as listed") @Nullable MaterialName sanitizer,

            @Asks("strength as read, in ppm or mV") @Nullable
            String strength,

            @Asks("pH as read") @Nullable Ratio ph)
            implements Harvesting {}

    @Act(
            word = "pack",
            name = "lot.packed",
            help = "Pack a lot: how many packs of which size, into what.",
            example = "did pack PA-1012 --packs 18boxes --size 4kg --containers used --held-before \"own beets\"")
    record LotPacked(
            @Asks(value = "the lot", bare = true) LotId lot,
            @Asks("how many packs, as counted") Amount packs,
            @Asks("what one pack holds") @Nullable Amount size,

            @Asks("new or used") @Nullable Containers containers,

            @Asks("used containers: what they held before") @Nullable
            String heldBefore,

            @Asks("what kind of container") @Nullable String into)
            implements Harvesting {
        @Override
        public List<Problem> faults() {
            boolean counted = packs.quantity().unit().dimension() == Dimension.COUNT;
            boolean nested =
                    size != null && size.quantity().unit() == packs.quantity().unit();
            return counted && !nested
                    ? List.of()
                    : List.of(new Problem(
                            "packs",
                            packs.toString(),
                            counted ? "a pack is said to hold packs" : "packs are counted",
                            "write --packs 18boxes --size 4kg"));
        }
    }

    @Act(
            word = "join-lots",
            name = "lot.joined",
            help = "Put several lots together into one new lot; it is no better than the worst of them.",
            example = "did join-lots PA-1012=30kg PA-1019=20kg --into PA-STORE")
    record LotsJoined(
            @Asks(value = "the lots, each with how much", bare = true)
            List<LotAmount> lots,

            @Asks("the new lot's name") LotId into,

            @Asks("what it came to, if measured again") @Nullable
            Amount quantity)
            implements Harvesting {
        @Override
        public List<Problem> faults() {
            boolean several = lots.stream().map(LotAmount::lot).distinct().count() > 1;
            return several
                    ? List.of()
                    : List.of(new Problem(
                            "join-lots",
                            lots.toString(),
                            "joining takes two lots or more",
                            "part of one lot gets a name of its own with: did split-lot"));
        }
    }

    @Act(
            word = "split-lot",
            name = "lot.split",
            help = "Take parts of a lot as new lots with names of their own; the rest keeps its name.",
            example = "did split-lot PA-1012 --into PA-1012a=20kg,PA-1012b=15kg")
    record LotSplit(
            @Asks(value = "the lot", bare = true) LotId lot,

            @Asks("the new lots, each with how much") List<LotAmount> into,

            @Asks("why, as in graded or kept for seed") @Nullable
            String why)
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

    @Act(
            word = "calibrate",
            name = "equipment.calibrated",
            help = "Check a scale, sprayer, seeder or thermometer against something known.",
            example =
                    "did calibrate --what \"market scale\" --against \"5 kg test weight\" --read \"5.01 kg\" --adjusted no")
    record EquipmentCalibrated(
            @Asks("what was checked") String what,
            @Asks("against what") @Nullable String against,
            @Asks("what it showed") @Nullable String read,
            @Asks("whether it was adjusted") @Nullable Boolean adjusted)
            implements Harvesting {}
}

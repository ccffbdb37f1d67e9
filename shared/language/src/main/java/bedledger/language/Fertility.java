package bedledger.language;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Compost, manure and other fertility. */
public sealed interface Fertility extends Fact {

    @Act(
            word = "build-pile",
            name = "pile.built",
            revision = 2,
            help = "Build a compost pile.",
            example = "did build-pile P1 --method windrow --feedstocks \"horse manure 400kg, straw 60kg 12% water\""
                    + " --carbon-to-nitrogen 30",
            caution = Caution.COMPOST)
    record PileBuilt(
            @Asks(value = "the pile", bare = true) PileId pile,

            @Asks("windrow, static-aerated, in-vessel, turned-otherwise or unmanaged") @Nullable
            PileMethod method,

            @Asks(value = "what went in, without amounts", optional = true)
            List<String> ingredients,

            @Asks(
                    value =
                            "or how much of each, with water of fresh and C, N of dry weight where known; apart by commas",
                    optional = true)
            List<Feedstock> feedstocks,

            @Asks("yes if any of it comes from animals") @Nullable
            Boolean animalMaterial,

            @Asks("carbon to nitrogen when built") @Nullable Ratio carbonToNitrogen,
            @Asks("how much went in") @Nullable Amount quantity)
            implements Fertility {
        /** The names of all that went in, with or without amounts. */
        public List<String> contents() {
            return Stream.concat(ingredients.stream(), feedstocks.stream().map(Feedstock::name))
                    .toList();
        }
    }

    @Act(
            word = "read-pile",
            name = "pile.read",
            help = "Enter the lowest probe reading of each of a run of days.",
            example = "did read-pile P1 58 61 60 63 --from 2025-03-07",
            caution = Caution.COMPOST)
    record PileRead(
            @Asks(value = "the pile", bare = true) PileId pile,

            @Asks(value = "one reading a day, oldest first", bare = true)
            List<Temperature> readings)
            implements Fertility {}

    @Act(
            word = "turn-pile",
            name = "pile.turned",
            help = "Turn a compost pile.",
            example = "did turn-pile P1",
            caution = Caution.COMPOST)
    record PileTurned(@Asks(value = "the pile", bare = true) PileId pile) implements Fertility {}

    @Act(
            word = "cure-pile",
            name = "pile.cured",
            help = "Note that a pile has cured.",
            example = "did cure-pile P1 --days 40")
    record PileCured(
            @Asks(value = "the pile", bare = true) PileId pile,

            @Asks(value = "how many days it cured", most = 2000) @Nullable
            Integer days)
            implements Fertility {}

    @Act(
            word = "finish-pile",
            name = "pile.finished",
            help = "Say how much compost a pile made.",
            example = "did finish-pile P1 --volume 1.5m3")
    record PileFinished(
            @Asks(value = "the pile", bare = true) PileId pile,
            @Asks("how much") @Nullable Volume volume,
            @Asks("or its weight") @Nullable Mass weight)
            implements Fertility {}

    @Act(
            word = "spread",
            name = "fertility.spread",
            help = "Spread compost from a pile, raw manure, or a listed material.",
            example = "did spread N5,N6 --pile P1 --per-bed 120kg",
            caution = Caution.MANURE)
    record Spread(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("compost from this pile") @Nullable PileId pile,

            @Asks("raw manure of this animal, bedding included") @Nullable
            String manure,

            @Asks("or this material, as listed") @Nullable MaterialName material,
            @Asks("how much over all the beds") @Nullable Amount quantity,
            @Asks("or how much on each bed") @Nullable Amount perBed,

            @Asks("water in it, of fresh weight, if known") @Nullable
            Share moisture,

            @Asks("total nitrogen, of fresh weight, if known") @Nullable
            Share nitrogen,

            @Asks("phosphorus (P, not P2O5), of fresh weight, if known") @Nullable
            Share phosphorus,

            @Asks("where it came from") @Nullable String source,

            @Asks("why, as in a soil test that showed a lack") @Nullable
            String reason)
            implements Fertility {
        @Override
        public List<Problem> faults() {
            long named = java.util.stream.Stream.of(pile, manure, material)
                    .filter(java.util.Objects::nonNull)
                    .count();
            List<Problem> faults = new java.util.ArrayList<>(OneOf.quantity(quantity, perBed));
            if (named != 1) {
                faults.add(new Problem(
                        "spread",
                        beds.toString(),
                        named == 0 ? "it does not say what was spread" : "it names several things",
                        "give one of --pile, --manure and --material"));
            }
            return faults;
        }
    }

    @Act(
            word = "incorporate",
            name = "fertility.incorporated",
            help = "Work what was spread into the soil.",
            example = "did incorporate N5 --implement \"tine harrow\" --depth 10cm --passes 2",
            caution = Caution.TILL)
    record Incorporated(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("which implement") @Nullable String implement,
            @Asks("how deep") @Nullable Length depth,

            @Asks(value = "passes over the bed", least = 1, most = 20) @Nullable
            Integer passes)
            implements Fertility {}
}

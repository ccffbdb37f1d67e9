package bedledger.language;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Work on the bed itself: residue, roots, soil, tarps, mulch, drip lines. */
public sealed interface BedWork extends Fact {

    @Act(
            word = "flail",
            name = "bed.residue-flailed",
            help = "Flail-mow residue, a cover crop or a standing crop where it stands.",
            example = "did flail N3,N4 --passes 2 --half-bed --on yesterday --note \"wet\"",
            caution = Caution.FLAIL)
    record ResidueFlailed(
            @Asks(value = "the beds", bare = true) List<BedId> beds,

            @Asks(value = "passes over the bed", least = 1, most = 20) @Nullable
            Integer passes,

            @Asks("half a bed at a time") @Nullable Boolean halfBed,
            @Asks("height left standing") @Nullable Length height)
            implements BedWork {}

    @Act(
            word = "harrow",
            name = "bed.harrowed",
            help = "Harrow a bed, as to break up roots.",
            example = "did harrow N3 --tarp-folded-back",
            caution = Caution.TILL)
    record Harrowed(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("which harrow: tine, power …") @Nullable String implement,
            @Asks("how deep") @Nullable Length depth,

            @Asks(value = "passes over the bed", least = 1, most = 20) @Nullable
            Integer passes,

            @Asks("the tarp was folded back and laid again") @Nullable
            Boolean tarpFoldedBack)
            implements BedWork {}

    @Act(
            word = "broadfork",
            name = "bed.broadforked",
            help = "Loosen a bed with the broadfork.",
            example = "did broadfork N3")
    record Broadforked(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("how deep") @Nullable Length depth) implements BedWork {}

    @Act(
            word = "till",
            name = "bed.tilled",
            help = "Till, spade or plough a bed.",
            example = "did till N3 --implement \"rotary tiller\" --depth 12cm",
            caution = Caution.TILL)
    record Tilled(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("which implement") @Nullable String implement,
            @Asks("how deep") @Nullable Length depth,

            @Asks(value = "passes over the bed", least = 1, most = 20) @Nullable
            Integer passes)
            implements BedWork {}

    @Act(
            word = "shape",
            name = "bed.shaped",
            help = "Shape or rake a bed for planting.",
            example = "did shape N3 --implement rake",
            caution = Caution.TILL)
    record BedShaped(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("which implement") @Nullable String implement,

            @Asks(value = "passes over the bed", least = 1, most = 20) @Nullable
            Integer passes)
            implements BedWork {}

    @Act(
            word = "haul",
            name = "bed.residue-hauled-off",
            help = "Cart residue off the bed.",
            example = "did haul N5 --crop tomato --weight 45kg --roots cut --to compost")
    record ResidueHauledOff(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("the crop it came from") @Nullable CropName crop,
            @Asks("fresh weight hauled off") @Nullable Mass weight,

            @Asks("or the share of the residue hauled off") @Nullable
            Share share,

            @Asks("dry share of what was hauled, if measured") @Nullable
            Share dry,

            @Asks("cut at the ground or pulled with the crown") @Nullable
            Roots roots,

            @Asks("where it went") @Nullable String to)
            implements BedWork {
        @Override
        public List<Problem> faults() {
            return weight != null && share != null
                    ? List.of(new Problem(
                            "haul", beds.toString(), "it gives both a weight and a share", "leave one of the two out"))
                    : List.of();
        }
    }

    @Act(
            word = "tarp",
            name = "bed.tarped",
            help = "Lay a tarp over a bed.",
            example = "did tarp N3,N4 --material \"silage film\"",
            caution = Caution.TARP)
    record Tarped(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("what the tarp is made of") @Nullable String material,
            @Asks("yes if it is PVC, no if not") @Nullable Boolean pvc)
            implements BedWork {}

    @Act(
            word = "untarp",
            name = "bed.tarp-lifted",
            help = "Take the tarp off a bed.",
            example = "did untarp N3",
            caution = Caution.TARP)
    record TarpLifted(@Asks(value = "the beds", bare = true) List<BedId> beds) implements BedWork {}

    @Act(word = "mulch", name = "bed.mulched", help = "Lay a mulch.", example = "did mulch N5 --kind polyethylene")
    record Mulched(
            @Asks(value = "the beds", bare = true) List<BedId> beds,

            @Asks(
                    "straw, hay, leaves, wood-chip, grass, compost, paper, polyethylene, landscape-fabric, pvc, biodegradable-film")
            MulchKind kind,

            @Asks("how much over all the beds, if a plant material") @Nullable
            Amount quantity,

            @Asks("where it came from") @Nullable String source)
            implements BedWork {}

    @Act(word = "unmulch", name = "bed.mulch-removed", help = "Take a mulch off a bed.", example = "did unmulch N5")
    record MulchRemoved(
            @Asks(value = "the beds", bare = true) List<BedId> beds,

            @Asks("which mulch, if there are several") @Nullable
            MulchKind kind)
            implements BedWork {}

    @Act(word = "lay-drip", name = "bed.drip-laid", help = "Lay drip lines.", example = "did lay-drip N1,N2 --lines 2")
    record DripLaid(
            @Asks(value = "the beds", bare = true) List<BedId> beds,

            @Asks(value = "lines on each bed", least = 1, most = 20) @Nullable
            Integer lines)
            implements BedWork {}

    @Act(
            word = "pull-drip",
            name = "bed.drip-pulled",
            help = "Pull the drip lines off a bed.",
            example = "did pull-drip N3 N4 --people 5 --minutes 12")
    record DripPulled(@Asks(value = "the beds", bare = true) List<BedId> beds) implements BedWork {}

    @Act(
            word = "sample-soil",
            name = "soil.sampled",
            help = "Enter a soil sample and what the laboratory found.",
            example =
                    "did sample-soil N1..N8 --from-depth 0cm --to-depth 20cm --organic-carbon 1.9% --carbon-method combustion")
    record SoilSampled(
            @Asks(value = "the beds, as one sample", bare = true)
            List<BedId> beds,

            @Asks("top of the layer") @Nullable Length fromDepth,
            @Asks("bottom of the layer") @Nullable Length toDepth,

            @Asks("organic carbon of the fine earth") @Nullable
            Share organicCarbon,

            @Asks("or organic matter, as the laboratory gave it") @Nullable
            Share organicMatter,

            @Asks("how carbon was measured: combustion, loss-on-ignition …") @Nullable
            String carbonMethod,

            @Asks("the laboratory's factor from carbon to organic matter") @Nullable
            Ratio matterFactor,

            @Asks("bulk density of the fine earth") @Nullable
            Density bulkDensity,

            @Asks("stones by volume") @Nullable Share stones,
            @Asks("pH") @Nullable Ratio ph,
            @Asks("clay") @Nullable Share clay,
            @Asks("the laboratory") @Nullable String laboratory,
            @Asks("the report and other values") @Nullable String report,
            @Asks("the day the report came") @Nullable LocalDate reported)
            implements BedWork {}
}

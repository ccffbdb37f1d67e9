package bedledger.language;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Land: fields, beds, what was done to the land before, who lies next to it. */
public sealed interface Land extends Fact {

    @Act(
            word = "register-field",
            name = "land.field-registered",
            help = "Enter a field with its gross area.",
            example = "did register-field North --gross 0.05ha")
    record FieldRegistered(
            @Asks(value = "the field", bare = true) FieldId field,
            @Asks("gross area, paths included") Area gross,

            @Asks("what the field is to the farm: owned, leased …") @Nullable
            String tenure)
            implements Land {}

    @Act(
            word = "lay-out",
            name = "land.bed-laid-out",
            help = "Enter permanent beds of one size in a field.",
            example = "did lay-out N1..N8 --field North --length 20m --width 0.75m")
    record BedLaidOut(
            @Asks(value = "the new beds", bare = true) List<BedId> beds,
            @Asks("the field they lie in") FieldId field,
            @Asks("length of the bed top") Length length,
            @Asks("width of the bed top") Length width)
            implements Land {}

    @Act(
            word = "re-measure",
            name = "land.bed-remeasured",
            help = "Give beds a new length and width from this day on.",
            example = "did re-measure N1 --length 19.5m --width 0.75m")
    record BedRemeasured(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("length of the bed top") Length length,
            @Asks("width of the bed top") Length width)
            implements Land {}

    @Act(
            word = "split-bed",
            name = "land.bed-split",
            help = "Split a bed; both parts inherit its history.",
            example = "did split-bed N1 --into N1a,N1b --lengths 12m,8m")
    record BedSplit(
            @Asks(value = "the bed that is split", bare = true)
            BedId bed,

            @Asks("the new beds, in order") List<BedId> into,
            @Asks("their lengths, in the same order") List<Length> lengths)
            implements Land {
        @Override
        public List<Problem> faults() {
            return into.size() < 2 || into.size() != lengths.size()
                    ? List.of(new Problem(
                            "into",
                            into.toString(),
                            "a split needs two or more parts and a length for each",
                            "write --into N1a,N1b --lengths 12m,8m"))
                    : List.of();
        }
    }

    @Act(
            word = "rename-bed",
            name = "land.bed-renamed",
            help = "Give a bed another name from this day on; its id stays.",
            example = "did rename-bed N1 --called \"by the well\"")
    record BedRenamed(
            @Asks(value = "the bed", bare = true) BedId bed,
            @Asks("the name") String called) implements Land {}

    @Act(
            word = "retire-bed",
            name = "land.bed-retired",
            help = "Say that beds are no longer worked.",
            example = "did retire-bed N8")
    record BedRetired(@Asks(value = "the beds", bare = true) List<BedId> beds) implements Land {}

    @Act(
            word = "declare-land",
            name = "land.use-declared",
            help = "Say when a prohibited substance was last put on a field, and on what evidence.",
            example = "did declare-land North --none-since 2015-01-01 --evidence \"neighbour's affidavit\"")
    record LandUseDeclared(
            @Asks(value = "the field", bare = true) FieldId field,

            @Asks("the last day a prohibited substance was applied") @Nullable
            LocalDate lastApplied,

            @Asks("what it was") @Nullable String substance,

            @Asks("nothing prohibited since this day or earlier") @Nullable
            LocalDate noneSince,

            @Asks("affidavit, letter, spray record … and where it is kept") @Nullable
            String evidence)
            implements Land {
        @Override
        public List<Problem> faults() {
            return (lastApplied == null) == (noneSince == null)
                    ? List.of(new Problem(
                            "declare-land",
                            field.toString(),
                            "it needs one day, and one only",
                            "give either --last-applied DATE or --none-since DATE"))
                    : List.of();
        }
    }

    @Act(
            word = "declare-neighbour",
            name = "land.neighbour-declared",
            help = "Say what lies beside a field and what buffer there is.",
            example = "did declare-neighbour North --side east --use hay --buffer hedge --buffer-width 8m")
    record NeighbourDeclared(
            @Asks(value = "the field", bare = true) FieldId field,
            @Asks("which side") String side,
            @Asks("how the land beyond is used") @Nullable String use,

            @Asks("what the buffer is: hedge, ditch, mown strip") @Nullable
            String buffer,

            @Asks("how wide the buffer is") @Nullable Length bufferWidth)
            implements Land {}

    @Act(
            word = "notify-neighbour",
            name = "land.neighbour-notified",
            help = "Tell a neighbour of your fields, as to keep sprays away, and what they answered.",
            example = "did notify-neighbour North --side east --told \"no spraying within 8 m\" --how letter")
    record NeighbourNotified(
            @Asks(value = "the field", bare = true) FieldId field,
            @Asks("which side") @Nullable String side,
            @Asks("what they were told or asked") String told,

            @Asks("how: by letter, by telephone, a sign …") @Nullable
            String how,

            @Asks("what they answered; 'nothing' counts") @Nullable
            String reply)
            implements Land {}

    @Act(
            word = "set-wood",
            name = "land.wood-set",
            help = "Set wood that touches the soil: posts, bed edging, a frame, new or in place of old.",
            example = "did set-wood N1 --what \"bed edging, larch\" --treated-wood no")
    record WoodSet(
            @Asks(value = "the beds", bare = true) List<BedId> beds,
            @Asks("what was set, and of which wood") String what,

            @Asks("yes if the wood is treated, no if not") @Nullable
            Boolean treatedWood,

            @Asks("with what it is treated") @Nullable String treatedWith)
            implements Land {}

    @Act(
            word = "report-incident",
            name = "land.incident-reported",
            help = "Drift, flood, animals or a prohibited substance on beds: tell your certifier at once.",
            example = "did report-incident N1,N2 --what \"spray drift from the road side\" --certifier-told yes")
    record IncidentReported(
            @Asks(value = "the beds concerned", bare = true) List<BedId> beds,
            @Asks("what happened") String what,
            @Asks("where it came from") @Nullable String source,

            @Asks("whether the certifier was told") @Nullable
            Boolean certifierTold,

            @Asks("what was done about it") @Nullable String action)
            implements Land {}

    @Act(
            word = "found",
            name = "land.found",
            help = "Say what is on or in beds when the book begins, or to close a gap.",
            example = "did found N1 --crop kale --tarp \"silage film\"")
    record Found(
            @Asks(value = "the beds", bare = true) List<BedId> beds,

            @Asks("nothing grows, nothing lies on them") @Nullable
            Boolean nothing,

            @Asks("a crop standing there") @Nullable CropName crop,
            @Asks("a cover crop standing there") @Nullable CropName coverCrop,

            @Asks("a tarp lying there, of this material") @Nullable
            String tarp,

            @Asks("a mulch lying there") @Nullable MulchKind mulch,

            @Asks("drip lines lying there, how many") @Nullable
            Integer dripLines,

            @Asks("a row cover over it") @Nullable Boolean rowCover)
            implements Land {
        @Override
        public List<Problem> faults() {
            boolean something = crop != null
                    || coverCrop != null
                    || tarp != null
                    || mulch != null
                    || dripLines != null
                    || Boolean.TRUE.equals(rowCover);
            return something == Boolean.TRUE.equals(nothing)
                    ? List.of(new Problem(
                            "found",
                            beds.toString(),
                            "it says nothing, or both nothing and something",
                            "write --nothing, or what was found: --crop, --tarp, --mulch …"))
                    : List.of();
        }
    }
}

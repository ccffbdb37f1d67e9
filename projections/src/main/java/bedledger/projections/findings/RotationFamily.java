package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.CropName;
import bedledger.language.Land;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The same family does not follow itself on a bed without something between, 7 CFR 205.205 with 205.2 "Crop rotation". */
record RotationFamily(RuleSheet sheet) implements Rule {

    /** A crop or cover crop that stood in a bed. {@code began} and {@code ended} are places on the bed's timeline. */
    private static final class Stood {
        private final BedState.Stand stand;
        private final BedStep planted;
        private final int began;
        private int ended = Integer.MAX_VALUE;
        private @Nullable BedStep end;

        Stood(BedState.Stand stand, BedStep planted, int began) {
            this.stand = stand;
            this.planted = planted;
            this.began = began;
        }

        CropName crop() {
            return stand.crop();
        }
    }

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        List<Finding> findings = new ArrayList<>();
        Map<CropName, Set<BedId>> unknown = new TreeMap<>(java.util.Comparator.comparing(CropName::name));
        Map<CropName, BedStep> seen = new HashMap<>();
        for (BedId bed : inquiry.beds()) {
            List<Stood> stood = stood(inquiry.steps(bed));
            for (Stood crop : stood) {
                if (crop.stand.cover() || crop.planted.fact() instanceof Land.Found || !crop.planted.own()) {
                    continue;
                }
                follows(inquiry, stood, crop).ifPresent(before -> findings.add(finding(inquiry, bed, before, crop)));
                if (inquiry.families(crop.crop()).isEmpty() && crop.began > 0 && hasPredecessor(stood, crop)) {
                    unknown.computeIfAbsent(crop.crop(), name -> new HashSet<>())
                            .add(bed);
                    seen.merge(crop.crop(), crop.planted, RotationFamily::earlier);
                }
            }
        }
        unknown.forEach((crop, beds) ->
                findings.add(unknown(inquiry, crop, beds, java.util.Objects.requireNonNull(seen.get(crop)))));
        return findings;
    }

    private static BedStep earlier(BedStep one, BedStep other) {
        return other.day().isBefore(one.day()) ? other : one;
    }

    private static boolean hasPredecessor(List<Stood> stood, Stood crop) {
        return stood.stream().anyMatch(other -> !other.stand.cover() && other.ended < crop.began);
    }

    /** Filling gaps in what stands adds no new stand, so it is no new crop here either. */
    private static List<Stood> stood(List<BedStep> steps) {
        List<Stood> all = new ArrayList<>();
        List<Stood> open = new ArrayList<>();
        for (int place = 0; place < steps.size(); place++) {
            BedStep step = steps.get(place);
            for (BedState.Stand stand : step.after().crops()) {
                if (open.stream().noneMatch(one -> same(one.stand, stand))) {
                    Stood one = new Stood(stand, step, place);
                    open.add(one);
                    all.add(one);
                }
            }
            for (Stood one : List.copyOf(open)) {
                if (step.after().crops().stream().noneMatch(stand -> same(one.stand, stand))) {
                    one.ended = place;
                    one.end = step;
                    open.remove(one);
                }
            }
        }
        return all;
    }

    /** Staking changes a stand's record, not the stand. */
    private static boolean same(BedState.Stand one, BedState.Stand other) {
        return one.entry() == other.entry() && one.crop().equals(other.crop()) && one.cover() == other.cover();
    }

    /** The last crop of the same family that ended before this one was planted, if nothing else stood between. */
    private static Optional<Stood> follows(Inquiry inquiry, List<Stood> stood, Stood crop) {
        Optional<Stood> before = stood.stream()
                .filter(other -> !other.stand.cover() && other.ended < crop.began && related(inquiry, other, crop))
                .reduce((one, other) -> other.ended >= one.ended ? other : one);
        return before.filter(last -> stood.stream().noneMatch(other -> between(inquiry, last, other, crop)));
    }

    private static boolean between(Inquiry inquiry, Stood last, Stood other, Stood crop) {
        boolean meanwhile = other.ended > last.ended && other.began < crop.began;
        boolean plantedTogether = other.planted.day().equals(crop.planted.day());
        return meanwhile && !plantedTogether && (other.stand.cover() || !related(inquiry, other, crop));
    }

    private static boolean related(Inquiry inquiry, Stood one, Stood other) {
        return related(inquiry, one.crop(), other.crop());
    }

    private static boolean related(Inquiry inquiry, CropName one, CropName other) {
        if (one.equals(other)) {
            return true;
        }
        Set<String> families = inquiry.families(one);
        return inquiry.families(other).stream().anyMatch(families::contains);
    }

    private Finding finding(Inquiry inquiry, BedId bed, Stood before, Stood crop) {
        BedStep end = before.end;
        String families = inquiry.families(crop.crop()).stream()
                .filter(family -> inquiry.families(before.crop()).contains(family))
                .sorted()
                .reduce((one, other) -> one + ", " + other)
                .map(family -> " (" + family + ")")
                .orElse("");
        Draft draft = new Draft(sheet, inquiry, bed + " " + crop.crop() + " after " + before.crop(), crop.planted.day())
                .at(bed)
                .restsOn(before.planted.entry(), crop.planted.entry())
                .settledBy(
                        "Show the certifier the rotation planned for this bed; a cover crop or another family between breaks the"
                                + " sequence.");
        String ended = end == null ? "" : ", which ended on " + end.day();
        if (end != null) {
            draft.restsOn(end.entry());
        }
        return draft.says(
                Outcome.ASK,
                Wording.capital(crop.crop().name()) + " planted in " + bed + " on " + crop.planted.day()
                        + " follows "
                        + before.crop() + ended + ", of the same family" + families
                        + ", with no other crop or cover crop between. The rule sets no number of years.");
    }

    private Finding unknown(Inquiry inquiry, CropName crop, Set<BedId> beds, BedStep planted) {
        return new Draft(sheet, inquiry, crop + ", family not known", planted.day())
                .at(beds)
                .restsOn(planted.entry())
                .settledBy("Enter its family: did add-crop " + crop + " --family FAMILY.")
                .says(
                        Outcome.INCOMPLETE,
                        "The family of " + crop + " is not known, so what it follows on " + Wording.list(beds)
                                + " cannot be judged.");
    }

    /** The same of a crop that is not planted yet: the last of its family here, if nothing stood since. */
    @Override
    public List<Doubt> doubts(Inquiry inquiry, BedId bed, CropName crop) {
        List<Stood> stood = stood(inquiry.steps(bed));
        Optional<Stood> before = stood.stream()
                .filter(other ->
                        !other.stand.cover() && other.ended < Integer.MAX_VALUE && related(inquiry, other.crop(), crop))
                .reduce((one, other) -> other.ended >= one.ended ? other : one);
        return before.stream()
                .filter(last -> stood.stream()
                        .noneMatch(other -> other.ended > last.ended
                                && (other.stand.cover() || !related(inquiry, other.crop(), crop))))
                .map(last -> new Doubt(
                        sheet.id(),
                        Outcome.ASK,
                        Wording.capital(crop.name()) + " in " + bed + " would follow " + last.crop()
                                + (last.end == null ? "" : ", which ended on " + last.end.day())
                                + ", of the same family, with nothing between.",
                        last.end == null
                                ? List.of(last.planted.number())
                                : List.of(last.planted.number(), last.end.number()),
                        sheet.citation()))
                .toList();
    }
}

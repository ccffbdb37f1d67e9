package bedledger.projections.returned;

import bedledger.language.BedWork;
import bedledger.language.CoverEnd;
import bedledger.language.Entry;
import bedledger.language.Planting.CoverEnded;
import bedledger.projections.estimate.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The two pieces of a group: its shoots and its roots. */
final class CropPieces {
    private final CropGroup group;
    private final Basis basis;
    private final List<Weighing> weighings = new ArrayList<>();
    private final Composing composing;
    private final List<Hauled> hauled = new ArrayList<>();

    CropPieces(CropGroup group) {
        this.group = group;
        this.basis = group.basis();
        this.composing = new Composing(group);
    }

    List<Return> pieces() {
        Working working = new Working();
        group.cases().forEach(each -> {
            weighings.add(new Weighing(basis, each.cropping, working));
            working.behind(each.cropping.plantings());
            working.remarks(each.remarks);
        });
        sharing(working);
        working.behind(group.end());
        Gross gross = new GrossResidue(group, weighings, working).gross();
        Working shoots = working.copy();
        Working roots = working.copy();
        Carrying left = new Carrying(group, gross, shoots, roots);
        hauled.addAll(left.hauled());
        hauledBeforeTheQuadrats();
        shoots.missing(gross.shootsMissing());
        roots.missing(gross.rootsMissing());
        return List.of(shoots(gross, gone(left.shoots(), shoots), shoots), roots(left.roots(), roots));
    }

    /** What was hauled off by the time {@link #pieces} has been asked for. */
    List<Hauled> hauled() {
        return List.copyOf(hauled);
    }

    /** Quadrats that were cut after a haul do not have it in them, so it is not subtracted; it was hauled off all the same. */
    private void hauledBeforeTheQuadrats() {
        CropCase one = group.cases().get(0);
        one.hauls.stream()
                .filter(haul -> !one.haulsToSubtract().contains(haul))
                .forEach(haul -> hauled.add(Hauled.of(group, haul, weighed(haul))));
    }

    private Optional<Estimate> weighed(Entry haul) {
        BedWork.ResidueHauledOff off = (BedWork.ResidueHauledOff) haul.fact();
        if (off.weight() == null) {
            return Optional.empty();
        }
        double fresh = off.weight().grams() / 1000 * group.part(haul);
        return Cuts.dry(off.dry())
                .map(dry -> Estimate.exact(fresh * dry.value(), "kg"))
                .or(() -> basis.residues.dryOfFreshResidue(group.crop(), fresh));
    }

    /** One sentence for each set of beds that was harvested at once. */
    private void sharing(Working working) {
        SortedMap<String, SortedSet<Long>> harvests = new TreeMap<>();
        weighings.forEach(each -> each.shared()
                .forEach((number, beds) ->
                        harvests.computeIfAbsent(beds, over -> new TreeSet<>()).add(number)));
        harvests.forEach((beds, numbers) -> working.remark("harvested over " + beds + " at once, shared by area: "
                + numbers.stream().map(number -> "#" + number).collect(Collectors.joining(" "))));
    }

    /** What a cover crop's end took away with it. */
    private Optional<Estimate> gone(Optional<Estimate> shoots, Working working) {
        if (!(group.end().fact() instanceof CoverEnded ended)) {
            notWorkedIn(working);
            return shoots;
        }
        if (ended.how() == CoverEnd.HAULED_OFF) {
            working.remark("hauled off when it was ended (#" + group.end().number()
                    + "): the shoots are gone, the roots stay");
            hauled.add(Hauled.of(group, group.end(), shoots));
            return Optional.of(Estimate.exact(0, "kg"));
        }
        if (ended.how() == CoverEnd.GRAZED) {
            working.missing("how much the animals took (#" + group.end().number() + ")");
            return Optional.empty();
        }
        return shoots;
    }

    private void notWorkedIn(Working working) {
        boolean lies = group.cases().stream().allMatch(each -> each.shredded.isEmpty());
        if (lies && group.hauls().isEmpty()) {
            working.remark("no flailing, tilling or harrowing since it ended is on record");
        }
    }

    private Return shoots(Gross gross, Optional<Estimate> dry, Working working) {
        Matter matter = dry.map(each -> composing.shoots(each, gross.freshPerDry(), working))
                .orElse(Matter.UNKNOWN);
        Stream<Estimate> figures =
                Stream.concat(matter.estimates(), gross.others().stream().map(OtherEvidence::dry));
        return piece(
                group.cover() ? SourceKind.COVER_SHOOTS : SourceKind.CROP_SHOOTS,
                matter,
                working,
                figures,
                gross.others(),
                gross.crossChecks());
    }

    private Return roots(Optional<Estimate> dry, Working working) {
        Matter matter = dry.map(each -> composing.roots(each, working)).orElse(Matter.UNKNOWN);
        return piece(
                group.cover() ? SourceKind.COVER_ROOTS : SourceKind.CROP_ROOTS,
                matter,
                working,
                matter.estimates(),
                List.of(),
                List.of());
    }

    private Return piece(
            SourceKind kind,
            Matter matter,
            Working working,
            Stream<Estimate> figures,
            List<OtherEvidence> others,
            List<CrossCheck> crossChecks) {
        List<BedShare> shares = group.shares(weighings);
        if (shares.size() > 1) {
            working.remark("estimated for " + String.join(" ", beds(shares)) + " together, shared by area");
        }
        return new Return(
                kind,
                group.crop(),
                group.end().head().doneOn(),
                shares,
                group.evidence(),
                matter,
                working.missing(),
                working.remarks(),
                method(matter),
                composing.used(figures),
                others,
                crossChecks,
                working.entries());
    }

    private static List<String> beds(List<BedShare> shares) {
        return shares.stream().map(each -> each.bed().toString()).toList();
    }

    private String method(Matter matter) {
        return matter.dry()
                .map(each -> String.join("; ", each.grounds().methods()))
                .filter(each -> !each.isEmpty())
                .orElse(group.evidence().words());
    }
}

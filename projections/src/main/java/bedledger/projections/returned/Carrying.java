package bedledger.projections.returned;

import bedledger.language.BedWork.ResidueHauledOff;
import bedledger.language.Entry;
import bedledger.language.Roots;
import bedledger.projections.estimate.DryShare;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.history.BedAreas;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes what was hauled off from what stood there: shoots by weight or share, roots if they were pulled. */
final class Carrying {
    private final CropGroup group;
    private final Working shootWork;
    private final Working rootWork;
    private Optional<Estimate> shoots;
    private Optional<Estimate> roots;
    private final List<Hauled> hauled = new ArrayList<>();

    Carrying(CropGroup group, Gross gross, Working shootWork, Working rootWork) {
        this.group = group;
        this.shootWork = shootWork;
        this.rootWork = rootWork;
        this.shoots = gross.shoots();
        this.roots = gross.roots();
        group.hauls().forEach(this::take);
    }

    Optional<Estimate> shoots() {
        return shoots;
    }

    /** What each haul took of the shoots. */
    List<Hauled> hauled() {
        return List.copyOf(hauled);
    }

    private void hauled(Entry entry, Optional<Estimate> dry) {
        hauled.add(Hauled.of(group, entry, dry));
    }

    Optional<Estimate> roots() {
        return roots;
    }

    private void take(Entry entry) {
        ResidueHauledOff haul = (ResidueHauledOff) entry.fact();
        shootWork.behind(entry);
        rootWork.behind(entry);
        Optional<Estimate> stood = shoots;
        takeShoots(entry, haul);
        takeRoots(entry, haul, stood);
    }

    private void takeShoots(Entry entry, ResidueHauledOff haul) {
        if (haul.share() != null) {
            double share = haul.share().percent() / 100;
            shootWork.remark("hauled off (#" + entry.number() + "): " + haul.share() + " of the residue");
            hauled(entry, shoots.map(each -> each.times(share)));
            shoots = shoots.map(each -> each.times(1 - share));
        } else if (haul.weight() != null) {
            takeWeight(entry, haul, haul.weight().grams() / 1000 * group.part(entry));
        } else {
            shootWork.missing(
                    "how much was hauled off (#" + entry.number() + "): neither a weight nor a share is on record");
            hauled(entry, Optional.empty());
            shoots = Optional.empty();
        }
    }

    private void takeWeight(Entry entry, ResidueHauledOff haul, double fresh) {
        Optional<DryShare> measured = Cuts.dry(haul.dry());
        Optional<Estimate> dry = measured.map(each -> Estimate.exact(fresh * each.value(), "kg"))
                .or(() -> group.basis().residues.dryOfFreshResidue(group.crop(), fresh));
        hauled(entry, dry);
        String shared = BedAreas.beds(entry).size() > 1 ? ", shared by area" : "";
        String at = measured.isPresent() ? "at the dry share measured" : "at the table's dry share";
        if (dry.isEmpty()) {
            shootWork.missing("the dry share of what was hauled off (#" + entry.number() + ")");
            shoots = Optional.empty();
            return;
        }
        Estimate hauled = dry.get();
        shootWork.remark(
                "hauled off (#" + entry.number() + "): " + group.basis().unit.words(fresh) + " fresh" + shared + " = "
                        + group.basis().unit.words(hauled) + " dry " + at
                        + shoots.map(each -> ", of " + group.basis().unit.words(each) + " that stood there")
                                .orElse(""));
        shoots = shoots.map(each -> {
            String method = String.join("; ", each.grounds().methods()) + ", less what was hauled off";
            return each.minus(hauled).clippedAtZero().by(method);
        });
    }

    private void takeRoots(Entry entry, ResidueHauledOff haul, Optional<Estimate> stood) {
        if (haul.roots() == null) {
            rootWork.missing("whether the roots went with what was hauled off (#" + entry.number()
                    + "): cut or pulled is not on record; if pulled, the crown is gone");
            roots = Optional.empty();
        } else if (haul.roots() == Roots.CUT) {
            rootWork.remark("cut at the ground (#" + entry.number() + "): the roots stay");
        } else if (haul.share() != null) {
            double share = haul.share().percent() / 100;
            rootWork.remark("pulled (#" + entry.number() + "): the crown went with " + haul.share()
                    + "; fine roots that broke off are not counted");
            roots = roots.map(each -> each.times(1 - share));
        } else {
            pulledByWeight(entry, stood);
        }
    }

    /** Nobody counts the plants that were pulled: the crowns are taken to have gone in the proportion of the shoots. */
    private void pulledByWeight(Entry entry, Optional<Estimate> stood) {
        shootWork.remark("pulled (#" + entry.number()
                + "): the weight hauled off holds crowns and roots too, so the shoots are reckoned too low");
        Optional<Estimate> stays = stood.filter(each -> each.best() > 0)
                .flatMap(before ->
                        shoots.map(after -> after.ratioTo(before, "kg/kg").clippedAtZero()));
        if (stays.isEmpty()) {
            rootWork.missing("what part of the crop was pulled (#" + entry.number() + ")");
            roots = Optional.empty();
            return;
        }
        rootWork.remark("pulled (#" + entry.number() + "): the crowns went in the proportion of the shoots, "
                + Math.round(100 * (1 - stays.get().best())) + " %; fine roots that broke off are not counted");
        roots = roots.map(each -> each.times(stays.get()));
    }
}

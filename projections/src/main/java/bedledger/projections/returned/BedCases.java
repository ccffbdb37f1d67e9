package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BedWork;
import bedledger.language.CoverEnd;
import bedledger.language.CropName;
import bedledger.language.Cut;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import bedledger.language.Observation;
import bedledger.language.Planting;
import bedledger.language.Step;
import bedledger.projections.history.Cropping;
import bedledger.projections.history.Croppings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The croppings of one bed, each with the hauls and quadrats that belong to it by crop and place on the timeline. */
final class BedCases {
    private final Basis basis;
    private final BedId bed;
    private final List<Step<BedState>> steps;
    private final Map<Long, Integer> places = new HashMap<>();
    private final List<CropCase> cases;
    private final List<Entry> homelessCuts = new ArrayList<>();
    private final List<NotCounted> notCounted = new ArrayList<>();

    BedCases(Basis basis, BedId bed) {
        this.basis = basis;
        this.bed = bed;
        this.steps = basis.steps(bed);
        for (int at = 0; at < steps.size(); at++) {
            places.put(steps.get(at).entry().number(), at);
        }
        this.cases = Croppings.of(basis.farm, bed, basis.asOf).stream()
                .map(CropCase::new)
                .toList();
        cases.forEach(each -> each.shredded = shredded(each.cropping));
        for (int at = 0; at < steps.size(); at++) {
            assign(at, steps.get(at).entry());
        }
    }

    BedId bed() {
        return bed;
    }

    List<CropCase> cases() {
        return cases;
    }

    /** Quadrats cut where no crop is known to have stood. */
    List<Entry> homelessCuts() {
        return homelessCuts;
    }

    List<NotCounted> notCounted() {
        return notCounted;
    }

    private void assign(int at, Entry entry) {
        if (entry.fact() instanceof BedWork.ResidueHauledOff haul) {
            Optional<CropCase> owner = owner(at, haul.crop());
            owner.ifPresentOrElse(
                    each -> each.hauls.add(entry),
                    () -> notCounted.add(new NotCounted(
                            entry, bed, "hauled off, but no such crop is known to have stood in the bed before")));
        }
        if (entry.fact() instanceof Observation.QuadratsCut cut) {
            owner(at, cut.crop()).ifPresentOrElse(each -> take(each, at, entry, cut), () -> homelessCuts.add(entry));
        }
    }

    private void take(CropCase owner, int at, Entry entry, Observation.QuadratsCut cut) {
        Optional<Entry> work = workBetween(owner.cropping, at);
        boolean after = cut.when() == null ? work.isPresent() : cut.when() == Cut.AFTER_FLAILING;
        if (after) {
            owner.cutAfter.add(entry);
            return;
        }
        owner.cutBefore.add(entry);
        work.ifPresent(each -> owner.remarks.add("quadrats #" + entry.number() + " are written down as cut "
                + "before or at flailing, though #" + each.number() + " stands before them"));
    }

    /** The first flailing, tilling, harrowing or tarping from the end of the crop up to a place on the timeline. */
    private Optional<Entry> workBetween(Cropping cropping, int at) {
        return from(cropping)
                .filter(entry -> place(entry) <= at)
                .filter(entry -> worksIn(entry.fact()) || entry.fact() instanceof BedWork.Tarped)
                .findFirst();
    }

    private Optional<Entry> shredded(Cropping cropping) {
        return from(cropping).filter(entry -> worksIn(entry.fact())).findFirst();
    }

    /** What was done from the end of a crop, the end included. */
    private Stream<Entry> from(Cropping cropping) {
        return cropping.end().stream()
                .flatMap(end -> steps.subList(place(end), steps.size()).stream().map(Step::entry));
    }

    private static boolean worksIn(Fact fact) {
        return fact instanceof BedWork.ResidueFlailed
                || fact instanceof BedWork.Tilled
                || fact instanceof BedWork.Harrowed
                || fact instanceof Fertility.Incorporated
                || (fact instanceof Planting.CoverEnded ended && ended.how() != CoverEnd.WINTER_KILLED);
    }

    private int place(Entry entry) {
        return places.getOrDefault(entry.number(), Integer.MAX_VALUE);
    }

    private int end(CropCase each) {
        return each.cropping.end().map(this::place).orElse(Integer.MAX_VALUE);
    }

    private Optional<CropCase> owner(int at, @Nullable CropName named) {
        List<CropCase> begun = cases.stream()
                .filter(each -> place(each.cropping.plantings().get(0)) < at)
                .filter(each -> named == null || basis.same(named, each.cropping.crop()))
                .toList();
        if (named != null) {
            return begun.isEmpty() ? Optional.empty() : Optional.of(begun.get(begun.size() - 1));
        }
        Optional<CropCase> standing =
                begun.stream().filter(each -> end(each) > at).min(Comparator.comparing(each -> each.cropping.cover()));
        return standing.or(() ->
                begun.stream().max(Comparator.comparingInt(this::end).thenComparing(each -> !each.cropping.cover())));
    }
}

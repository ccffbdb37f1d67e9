package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Care;
import bedledger.language.CropName;
import bedledger.language.Harvesting;
import bedledger.language.LotId;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The label's days between spraying and harvest. */
record SprayInterval(RuleSheet sheet) implements Rule {

    /** One spraying and the picks that followed it, as far as they are bound by it. */
    private record Spraying(Done<Care.Sprayed> spray, SortedMap<Long, Done<Harvesting.Harvested>> picks) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<Long, Spraying> sprayings = new LinkedHashMap<>();
        inquiry.done(Care.Sprayed.class)
                .forEach(spray -> sprayings.put(spray.number(), new Spraying(spray, new TreeMap<>())));
        inquiry.beds().forEach(bed -> walk(inquiry, bed, sprayings));
        return sprayings.values().stream()
                .flatMap(spraying -> finding(inquiry, spraying).stream())
                .toList();
    }

    private static void walk(Inquiry inquiry, BedId bed, Map<Long, Spraying> sprayings) {
        Map<Long, Set<CropName>> open = new LinkedHashMap<>();
        for (BedStep step : inquiry.steps(bed)) {
            step.as(Harvesting.Harvested.class)
                    .ifPresent(harvest -> open.forEach((number, crops) -> Optional.ofNullable(sprayings.get(number))
                            .filter(spraying ->
                                    crops.contains(harvest.fact().crop()) || early(spraying.spray(), harvest.day()))
                            .ifPresent(spraying -> spraying.picks().put(harvest.number(), harvest))));
            open.values().forEach(crops -> crops.removeIf(crop -> !step.after().grows(crop)));
            if (sprayings.containsKey(step.number())) {
                open.put(step.number(), standing(step.before()));
            }
        }
    }

    private static Set<CropName> standing(BedState state) {
        return state.crops().stream()
                .filter(stand -> !stand.cover())
                .map(BedState.Stand::crop)
                .collect(Collectors.toCollection(HashSet::new));
    }

    private static boolean early(Done<Care.Sprayed> spray, LocalDate pick) {
        Integer days = spray.fact().preHarvestDays();
        return days != null && ChronoUnit.DAYS.between(spray.day(), pick) < days;
    }

    private Optional<Finding> finding(Inquiry inquiry, Spraying spraying) {
        Done<Care.Sprayed> spray = spraying.spray();
        Integer asked = spray.fact().preHarvestDays();
        List<Done<Harvesting.Harvested>> early = inOrder(spraying.picks().values().stream()
                .filter(pick -> early(spray, pick.day()))
                .toList());
        List<Done<Harvesting.Harvested>> told =
                early.isEmpty() ? inOrder(List.copyOf(spraying.picks().values())) : early;
        if (told.isEmpty()) {
            return Optional.empty();
        }
        String beds = Wording.list(spray.fact().beds());
        List<LotId> lots = told.stream().map(pick -> pick.fact().lot()).toList();
        String what = spray.fact().product() + " sprayed on " + beds + " on " + spray.day();
        Draft draft = new Draft(sheet, inquiry, beds + " " + spray.fact().product(), spray.day())
                .at(spray.fact().beds())
                .lots(lots)
                .restsOn(spray.entry())
                .restsOn(told.stream().map(Done::number).toList());
        if (asked == null) {
            return Optional.of(
                    draft.settledBy("Correct the spraying with the days on the label: --pre-harvest-days NUMBER.")
                            .says(
                                    Outcome.INCOMPLETE,
                                    what + ": the label's days before harvest are not recorded; picked since: "
                                            + Wording.lots(lots) + "."));
        }
        draft.counting(told.stream().map(pick -> counted(spray, pick, asked)).collect(Collectors.joining("; ")));
        return Optional.of(
                early.isEmpty()
                        ? draft.says(
                                Outcome.MET,
                                what + ": every pick since waited the " + Wording.days(asked) + " of the label.")
                        : draft.settledBy(
                                        "Do not sell or eat what was picked too early before asking: the label, the maker, the"
                                                + " certifier.")
                                .says(
                                        Outcome.NOT_MET,
                                        what + ": picked within the " + Wording.days(asked) + " of the label: "
                                                + Wording.lots(lots) + "."));
    }

    private static List<Done<Harvesting.Harvested>> inOrder(List<Done<Harvesting.Harvested>> picks) {
        return picks.stream()
                .sorted(java.util.Comparator.comparing(Done<Harvesting.Harvested>::day)
                        .thenComparing(Done::number))
                .toList();
    }

    private static String counted(Done<Care.Sprayed> spray, Done<Harvesting.Harvested> pick, int asked) {
        return pick.day() + " − " + spray.day() + " = " + Wording.days(ChronoUnit.DAYS.between(spray.day(), pick.day()))
                + ", " + asked + " asked";
    }

    @Override
    public List<Wait> waits(Inquiry inquiry, BedId bed, CropName crop) {
        List<Wait> waits = new ArrayList<>();
        inquiry.steps(bed)
                .forEach(step -> step.as(Care.Sprayed.class).ifPresent(spray -> {
                    Integer days = spray.fact().preHarvestDays();
                    if (days != null) {
                        LocalDate from = spray.day().plusDays(days);
                        String why = spray.fact().product() + " sprayed on " + bed + " on " + spray.day()
                                + ": its label asks " + Wording.days(days) + " before harvest, so not before " + from
                                + ".";
                        waits.add(new Wait(sheet.id(), from, why, List.of(spray.number()), sheet.citation()));
                    }
                }));
        return waits;
    }
}

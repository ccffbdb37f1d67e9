package bedledger.projections.due;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.CropName;
import bedledger.projections.due.DueItem.Kind;
import bedledger.projections.findings.Contact;
import bedledger.projections.findings.Doubt;
import bedledger.projections.findings.EarliestHarvest;
import bedledger.projections.findings.MayI;
import bedledger.projections.findings.Wait;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** From when on what stands in a bed may be picked, and from when on whatever would be planted in an empty one. */
public final class Intervals {
    /** Stands for what is not planted yet: nothing is known of it, so the longer interval is told first and the shorter with it. */
    public static final CropName ANY = new CropName("a crop");

    private static final String MANURE = "manure-interval";

    /** What makes two beds one item: the same crop held by the same entries until the same day. */
    private record Alike(CropName crop, List<List<Object>> waits) {
        static Alike of(EarliestHarvest harvest) {
            return new Alike(
                    harvest.crop(),
                    harvest.waits().stream()
                            .<List<Object>>map(wait -> List.of(
                                    wait.rule(),
                                    Objects.requireNonNullElse(wait.from(), LocalDate.MAX),
                                    wait.entries()))
                            .toList());
        }
    }

    /** What stands in the way of picking a crop from beds on the day asked, a sentence and its reasons for each group of beds. */
    public static List<String> said(MayI may, List<BedId> beds, CropName crop) {
        Map<Alike, List<EarliestHarvest>> held = new LinkedHashMap<>();
        beds.stream()
                .map(bed -> withoutReEntry(may.pick(bed, crop)))
                .filter(harvest -> !harvest.free())
                .forEach(harvest -> held.computeIfAbsent(Alike.of(harvest), alike -> new ArrayList<>())
                        .add(harvest));
        return held.values().stream()
                .map(alike -> Asked.capital(PickWords.says(what(alike), alike.get(0))) + ". "
                        + PickWords.why(alike.get(0).waits()))
                .toList();
    }

    private static String what(List<EarliestHarvest> alike) {
        String where = Asked.list(alike.stream().map(EarliestHarvest::bed).toList());
        CropName crop = alike.get(0).crop();
        return crop.equals(ANY) ? "what is planted in " + where + " now" : crop + " in " + where;
    }

    static Stream<DueItem> of(Asked asked) {
        Map<Alike, List<EarliestHarvest>> held = new LinkedHashMap<>();
        List<DueItem> others = new ArrayList<>();
        for (BedId bed : asked.beds()) {
            for (CropName crop : crops(asked.state(bed))) {
                EarliestHarvest harvest = withoutReEntry(asked.may().pick(bed, crop));
                if (!harvest.free()) {
                    held.computeIfAbsent(Alike.of(harvest), alike -> new ArrayList<>())
                            .add(harvest);
                } else if (!crop.equals(ANY)) {
                    freed(asked, bed, crop).forEach(others::add);
                }
            }
        }
        return Stream.of(held.values().stream().map(alike -> notYet(asked, alike)), others.stream(), conversion(asked))
                .flatMap(items -> items);
    }

    /** What stands in a bed and is picked some day; of a bed with nothing to pick, whatever comes next. */
    public static List<CropName> crops(BedState state) {
        List<CropName> standing = state.crops().stream()
                .filter(stand -> !stand.cover())
                .map(BedState.Stand::crop)
                .distinct()
                .toList();
        return standing.isEmpty() ? List.of(ANY) : standing;
    }

    /** Who may go in is told apart, to the hour. */
    public static EarliestHarvest withoutReEntry(MayI.Picking picking) {
        EarliestHarvest harvest = picking.earliest();
        return new EarliestHarvest(
                harvest.bed(),
                harvest.crop(),
                harvest.waits().stream()
                        .filter(wait -> !wait.rule().equals(PickWords.RE_ENTRY))
                        .toList());
    }

    private static DueItem notYet(Asked asked, List<EarliestHarvest> alike) {
        EarliestHarvest first = alike.get(0);
        List<BedId> beds = alike.stream().map(EarliestHarvest::bed).toList();
        String where = Asked.list(beds);
        boolean any = first.crop().equals(ANY);
        return new DueItem(
                Kind.NOT_YET,
                first.day().orElse(null),
                where + (any ? "" : " " + first.crop()),
                Asked.sorted(beds),
                PickWords.says(what(alike), first),
                PickWords.why(first.waits()),
                first.waits().stream().flatMap(wait -> wait.entries().stream()).toList(),
                command(asked, first, beds),
                first.waits().stream().map(Wait::citation).distinct().collect(Collectors.joining("; ")));
    }

    private static String command(Asked asked, EarliestHarvest harvest, List<BedId> beds) {
        boolean manure = harvest.waits().stream().anyMatch(wait -> wait.rule().equals(MANURE));
        if (manure && harvest.day().isEmpty()) {
            return "did incorporate " + Asked.typed(beds) + " --on DATE";
        }
        boolean clear = asked.state(harvest.bed()).crops().stream()
                .anyMatch(stand -> stand.crop().equals(harvest.crop()) && stand.clear());
        return manure && !clear && asked.may().facts().contact(harvest.crop()) == Contact.DEPENDS
                ? "did stake " + Asked.typed(beds) + " --crop \"" + harvest.crop() + "\" --clear-of-soil YES-OR-NO"
                : "bed " + harvest.bed();
    }

    /** Crops whose wait ended with the day before. */
    private static Stream<DueItem> freed(Asked asked, BedId bed, CropName crop) {
        EarliestHarvest before = withoutReEntry(asked.yesterday().pick(bed, crop));
        boolean ends = before.day().filter(asked.on()::equals).isPresent();
        return ends
                ? Stream.of(new DueItem(
                        Kind.FREE,
                        asked.on(),
                        bed + " " + crop,
                        List.of(bed),
                        crop + " in " + bed + ": the wait before picking is over, as the record stands",
                        PickWords.why(before.waits()),
                        before.waits().stream()
                                .flatMap(wait -> wait.entries().stream())
                                .toList(),
                        "did harvest " + bed + " --crop \"" + crop + "\" --quantity AMOUNT",
                        before.waits().get(0).citation()))
                : Stream.empty();
    }

    /** Land in conversion: what is sown too early is so for its whole life. */
    private static Stream<DueItem> conversion(Asked asked) {
        Map<List<Long>, List<BedId>> beds = new LinkedHashMap<>();
        Map<List<Long>, Doubt> doubts = new LinkedHashMap<>();
        for (BedId bed : asked.beds()) {
            for (Doubt doubt : asked.may().plant(bed, ANY).doubts()) {
                beds.computeIfAbsent(doubt.entries(), entries -> new ArrayList<>())
                        .add(bed);
                doubts.putIfAbsent(doubt.entries(), doubt);
            }
        }
        return doubts.entrySet().stream().map(entry -> {
            List<BedId> where = beds.getOrDefault(entry.getKey(), List.of());
            Doubt doubt = entry.getValue();
            return new DueItem(
                    Kind.NOT_YET,
                    null,
                    Asked.list(where),
                    Asked.sorted(where),
                    "to plant in " + Asked.list(where) + " now: " + doubt.outcome(),
                    doubt.why(),
                    doubt.entries(),
                    "bed " + where.get(0),
                    doubt.citation());
        });
    }

    private Intervals() {}
}

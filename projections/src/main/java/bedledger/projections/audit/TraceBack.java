package bedledger.projections.audit;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Harvesting;
import bedledger.language.LotId;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Outcome;
import bedledger.projections.gaps.Gap;
import bedledger.projections.trace.Node;
import bedledger.projections.trace.Trace;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One trace-back, link by link: what the record holds, and what is open, by its own shape, by the findings and by the gaps. */
final class TraceBack {
    private static final int SHOWN = 3;
    /** 7 CFR 205.202(b), as the link is called. */
    private static final int YEARS = 3;

    private final Evidence evidence;
    private final Behind behind;
    private final Node start;
    private final List<Node> back;
    private final List<LotId> lots;
    private final List<LotId> origins;

    TraceBack(Evidence evidence, Thing thing) {
        this.evidence = evidence;
        this.behind = new Behind(evidence.graph());
        this.start = evidence.graph().node(thing.id()).orElseThrow();
        this.back = Behind.nodes(Trace.of(evidence.graph(), start).back());
        this.lots = start.kind() == Node.Kind.LOT
                ? evidence.lot(start.id()).stream().toList()
                : behind.into(start.id(), Node.Kind.LOT).stream()
                        .flatMap(node -> evidence.lot(node.id()).stream())
                        .toList();
        this.origins = lots.stream()
                .flatMap(lot -> evidence.lineage().origins(lot).stream())
                .distinct()
                .toList();
    }

    TraceAnswer answer() {
        return new TraceAnswer(
                Stream.concat(
                                start.kind() == Node.Kind.LOT ? Stream.empty() : Stream.of(sale()),
                                Stream.of(lot(), harvest(), bed(), planting(), seed(), inputs(), land()))
                        .toList(),
                lots.stream().map(evidence::account).toList());
    }

    private LinkAnswer sale() {
        return answer(ChainLink.SALE, start.said(), start.entries(), List.of());
    }

    private LinkAnswer lot() {
        List<Question> open = new ArrayList<>();
        List<Long> entries = new ArrayList<>();
        for (LotId lot : lots) {
            evidence.account(lot).opening().ifPresentOrElse(entry -> entries.add(entry.number()), () -> {
                open.add(incomplete(
                        "Nothing on record began lot " + lot + ".",
                        "did harvest BEDS --crop CROP --quantity AMOUNT --lot " + lot.name() + " --on DATE",
                        start.entries()));
            });
        }
        back.stream().filter(node -> node.kind() == Node.Kind.WASHING).forEach(node -> entries.addAll(node.entries()));
        boolean washed = back.stream().anyMatch(node -> node.kind() == Node.Kind.WASHING);
        if (!washed && !lots.isEmpty()) {
            open.add(new Question(
                    Outcome.ASK,
                    "No washing of " + list(lots) + " is on record; that is not the same as not washed.",
                    "Say to the inspector whether and where it was washed, or enter it: did wash.",
                    List.copyOf(entries),
                    ""));
        }
        String wash = washed ? "; " + names(kind(Node.Kind.WASHING)) : "; no washing on record";
        return answer(ChainLink.LOT, list(lots) + (lots.isEmpty() ? "no lot" : wash), entries, open);
    }

    private LinkAnswer harvest() {
        List<String> said = new ArrayList<>();
        List<Long> entries = new ArrayList<>();
        List<Question> open = new ArrayList<>();
        for (LotId origin : origins) {
            evidence.account(origin).opening().ifPresent(entry -> {
                entries.add(entry.number());
                if (entry.fact() instanceof Harvesting.Harvested harvested) {
                    said.add(harvested.quantity() + " on " + entry.head().doneOn() + " from " + list(harvested.beds()));
                } else {
                    open.add(incomplete(
                            "Lot " + origin + " was found in store: its harvest is not in the book.",
                            "Show the paper record of that harvest; bed and seed are not traced here.",
                            List.of(entry.number())));
                }
            });
        }
        return answer(ChainLink.HARVEST, some(said, "no harvest on record"), entries, open);
    }

    private LinkAnswer bed() {
        List<Long> entries = new ArrayList<>();
        List<Question> open = new ArrayList<>();
        for (BedId bed : beds()) {
            evidence.graph().node(bed.key()).ifPresentOrElse(node -> entries.addAll(node.entries()), () -> {
                open.add(incomplete(
                        "Bed " + bed + " is not laid out in the book.",
                        "did lay-out " + bed + " --field FIELD --length LENGTH --width WIDTH --on DATE",
                        List.of()));
            });
        }
        return answer(
                ChainLink.BED, some(beds().stream().map(BedId::name).toList(), "no bed on record"), entries, open);
    }

    private LinkAnswer planting() {
        List<Node> plantings = kind(Node.Kind.PLANTING);
        List<Question> open = new ArrayList<>();
        for (Entry harvest : harvests()) {
            Harvesting.Harvested harvested = (Harvesting.Harvested) harvest.fact();
            if (behind.into(harvested.lot().key(), Node.Kind.PLANTING).isEmpty()) {
                open.add(incomplete(
                        "No sowing or planting of " + harvested.crop() + " in " + list(harvested.beds())
                                + " is on record before "
                                + harvest.head().doneOn() + ".",
                        "did sow " + harvested.beds().stream().map(BedId::name).collect(Collectors.joining(" "))
                                + " --crop " + harvested.crop() + " --seed-lot LOT --on DATE; or did transplant",
                        List.of(harvest.number())));
            }
        }
        return answer(
                ChainLink.PLANTING,
                some(plantings.stream().map(Node::name).toList(), "no sowing or planting on record"),
                entries(plantings),
                open);
    }

    private LinkAnswer seed() {
        List<Node> seed = Stream.concat(kind(Node.Kind.SEED_LOT).stream(), kind(Node.Kind.TRAYS).stream())
                .toList();
        LinkAnswer answer = answer(
                ChainLink.SEED,
                some(seed.stream().map(Node::said).toList(), "no seed lot and no trays on record"),
                entries(seed),
                List.of());
        List<Question> open = new ArrayList<>(answer.open());
        for (Node planting : kind(Node.Kind.PLANTING)) {
            boolean rooted = !behind.into(planting.id(), Node.Kind.SEED_LOT).isEmpty()
                    || !behind.into(planting.id(), Node.Kind.TRAYS).isEmpty();
            boolean told = answer.open().stream()
                    .anyMatch(question -> !Collections.disjoint(question.entries(), planting.entries()));
            if (!rooted && !told && !planting.words().contains("bought plants")) {
                open.add(incomplete(
                        planting.name() + ": from which seed lot or trays is not recorded.",
                        "correct " + planting.entries().get(0) + " --why \"left out\" --seed-lot LOT",
                        planting.entries()));
            }
        }
        return new LinkAnswer(ChainLink.SEED, answer.says(), answer.entries(), open);
    }

    private LinkAnswer inputs() {
        List<Node> inputs = kind(Node.Kind.INPUT);
        List<Question> open = new ArrayList<>();
        if (inputs.isEmpty() && !beds().isEmpty()) {
            open.add(new Question(
                    Outcome.ASK,
                    "Nothing is on record as put on " + list(beds())
                            + " in the three years before the harvest; that is not the same as nothing put on.",
                    "Say so to the inspector, or enter what was: did spread, did spray.",
                    List.of(),
                    ""));
        }
        beforeTheBook().ifPresent(open::add);
        return answer(
                ChainLink.INPUTS,
                some(inputs.stream().map(Node::name).toList(), "none on record"),
                entries(inputs),
                open);
    }

    /** Three years before the first harvest asked about are more than a young book can tell of. */
    private Optional<Question> beforeTheBook() {
        Optional<LocalDate> picked =
                harvests().stream().map(entry -> entry.head().doneOn()).min(Comparator.naturalOrder());
        return picked.map(day -> day.minusYears(YEARS))
                .filter(from -> evidence.begins().isAfter(from))
                .map(from -> new Question(
                        Outcome.ASK,
                        "The book tells of no day before " + evidence.begins() + ": what was put on " + list(beds())
                                + " from " + from + " until then is not in it.",
                        "Show the papers of that time: spray books, receipts, the word of whoever worked the land.",
                        List.of(),
                        ""));
    }

    private LinkAnswer land() {
        List<Node> fields = beds().stream()
                .flatMap(bed -> behind.into(bed.key(), Node.Kind.FIELD).stream())
                .distinct()
                .toList();
        List<Question> open = new ArrayList<>();
        if (fields.isEmpty()) {
            open.add(incomplete(
                    "No field is on record for " + (beds().isEmpty() ? "it" : list(beds())) + ".",
                    "did register-field FIELD --gross AREA; did declare-land FIELD --none-since DATE --evidence WHERE",
                    List.of()));
        }
        return answer(
                ChainLink.LAND,
                some(fields.stream().map(Node::said).toList(), "no field on record"),
                entries(fields),
                open);
    }

    /** Adds what the findings and the gaps say of a link. */
    private LinkAnswer answer(ChainLink link, String says, List<Long> entries, List<Question> own) {
        List<Question> open = new ArrayList<>(own);
        findings().stream()
                .filter(finding -> evidence.link(finding) == link)
                .map(TraceBack::question)
                .forEach(open::add);
        Set<Long> chain = new TreeSet<>(start.entries());
        back.forEach(node -> chain.addAll(node.entries()));
        evidence.gaps().stream()
                .filter(gap -> link.tells(gap.topic()) && !Collections.disjoint(gap.entries(), chain))
                .map(TraceBack::question)
                .forEach(open::add);
        open.sort(Comparator.comparing(Question::outcome).reversed());
        return new LinkAnswer(link, says, entries, open);
    }

    private Set<Finding> findings() {
        Set<Finding> all = new LinkedHashSet<>(evidence.open(lots));
        back.stream()
                .filter(node -> switch (node.kind()) {
                    case MATERIAL, PILE, SEED_LOT, TRAYS -> true;
                    default -> false;
                })
                .forEach(node -> all.addAll(evidence.withoutLots(node.id())));
        return all;
    }

    private static Question question(Finding finding) {
        return new Question(
                finding.outcome(), finding.sentence(), finding.settles(), finding.entries(), finding.citation());
    }

    private static Question question(Gap gap) {
        return incomplete(gap.subject() + ": " + gap.says(), gap.command(), gap.entries());
    }

    private static Question incomplete(String says, String settles, List<Long> entries) {
        return new Question(Outcome.INCOMPLETE, says, settles, entries, "");
    }

    private List<Entry> harvests() {
        return origins.stream()
                .flatMap(origin -> evidence.account(origin).opening().stream())
                .filter(entry -> entry.fact() instanceof Harvesting.Harvested)
                .toList();
    }

    private List<BedId> beds() {
        return harvests().stream()
                .flatMap(entry -> ((Harvesting.Harvested) entry.fact()).beds().stream())
                .distinct()
                .toList();
    }

    private List<Node> kind(Node.Kind kind) {
        return back.stream().filter(node -> node.kind() == kind).toList();
    }

    private static List<Long> entries(List<Node> nodes) {
        return nodes.stream().flatMap(node -> node.entries().stream()).toList();
    }

    private static String names(List<Node> nodes) {
        return some(nodes.stream().map(Node::name).toList(), "");
    }

    private static String list(Collection<?> things) {
        return things.stream().map(Object::toString).collect(Collectors.joining(", "));
    }

    /** The first few, and how many more. */
    private static String some(List<String> all, String none) {
        String more = all.size() > SHOWN ? "; and " + (all.size() - SHOWN) + " more" : "";
        return all.isEmpty() ? none : all.stream().limit(SHOWN).collect(Collectors.joining("; ")) + more;
    }
}

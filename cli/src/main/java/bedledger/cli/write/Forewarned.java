package bedledger.cli.write;

import bedledger.cli.read.Asking;
import bedledger.cli.read.BlendWords;
import bedledger.cli.read.ReadBook;
import bedledger.domain.Book;
import bedledger.domain.Written;
import bedledger.language.ActId;
import bedledger.language.BedId;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.FieldId;
import bedledger.language.Land;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import bedledger.language.PileId;
import bedledger.language.Place;
import bedledger.language.Selling;
import bedledger.language.Stock;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.BookReader;
import bedledger.projections.compost.Pile;
import bedledger.projections.due.Beforehand;
import bedledger.projections.findings.CropFacts;
import bedledger.projections.findings.MayI;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.findings.Settings;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Adds to what was written what the rules would say of it; acts that no rule waits for cost nothing. */
final class Forewarned {
    private final Book book;
    private final BookFolder folder;
    private final Known known;
    private @Nullable RuleBook rules;
    private @Nullable CropFacts facts;

    Forewarned(Book book, BookFolder folder, Known known) {
        this.book = book;
        this.folder = folder;
        this.known = known;
    }

    Written told(Written written) {
        if (written.entries().stream()
                .noneMatch(entry -> Beforehand.concerns(entry.fact()) || entry.fact() instanceof Fertility.PileBuilt)) {
            return written;
        }
        List<String> says = new ArrayList<>(written.says());
        written.entries().stream()
                .flatMap(entry -> entry.fact() instanceof Fertility.PileBuilt built ? Stream.of(built) : Stream.empty())
                .filter(built -> !built.feedstocks().isEmpty())
                .forEach(built -> says.add(mix(built)));
        written.entries().stream()
                .filter(entry -> Beforehand.concerns(entry.fact()))
                .forEach(entry -> says.addAll(says(written, entry)));
        return new Written(written.entries(), says);
    }

    List<String> ofMany(List<Entry> before, List<Entry> acts, LocalDate day) {
        if (acts.stream().noneMatch(entry -> Beforehand.concerns(entry.fact()))) {
            return List.of();
        }
        Farm farm = Farm.of(Stream.concat(before.stream(), acts.stream()).toList());
        RuleBook by = Asking.named(book.opened().rules());
        return Beforehand.ofMany(new MayI(farm, by, Settings.of(farm, day), Asking.facts(known.tables()), day), acts);
    }

    private String mix(Fertility.PileBuilt built) {
        Tables tables =
                ReadBook.tables(book.ofKind(BookKeeping.CropAdded.class), book.ofKind(BookKeeping.OwnValueNoted.class));
        return BlendWords.asItIsBuilt(Pile.mix(built, tables), built.pile().toString());
    }

    private List<String> says(Written written, Entry entry) {
        Collection<Entry> all = entry.fact() instanceof Selling.Sold sold && Beforehand.ofLots(sold)
                ? behind(sold)
                : touched(entry.fact().places());
        Set<ActId> now = written.entries().stream().map(Entry::act).collect(Collectors.toSet());
        Farm before =
                Farm.of(all.stream().filter(one -> !now.contains(one.act())).toList());
        return Beforehand.says(may(before, entry.head().doneOn()), entry);
    }

    private Collection<Entry> behind(Selling.Sold sold) {
        List<LotId> lots = sold.lots().stream().map(LotAmount::lot).distinct().toList();
        Map<Long, Entry> found = new TreeMap<>();
        Optional<Collection<Entry>> behind = BehindLots.of(book, lots);
        if (behind.isEmpty()) {
            return BookReader.of(folder).entries();
        }
        behind.get().forEach(entry -> found.put(entry.number(), entry));
        BehindLots.everywhere().flatMap(this::alone).forEach(entry -> found.putIfAbsent(entry.number(), entry));
        return found.values();
    }

    private Settings settings(LocalDate day) {
        return Settings.of(Farm.of(alone(BookKeeping.ReadingChosen.class).toList()), day);
    }

    private MayI may(Farm farm, LocalDate day) {
        RuleBook by = rules == null ? Asking.named(book.opened().rules()) : rules;
        CropFacts of = facts == null ? Asking.facts(known.tables()) : facts;
        rules = by;
        facts = of;
        return new MayI(farm, by, settings(day), of, day);
    }

    /** What the waits of a bed rest on: its own entries, those of its field, of piles spread on it, and what it was split from. */
    private Collection<Entry> touched(Collection<Place> places) {
        Map<Long, Entry> found = new TreeMap<>();
        Set<Place> asked = new HashSet<>();
        Set<Place> ask = places.stream().filter(BedId.class::isInstance).collect(Collectors.toSet());
        while (asked.addAll(ask)) {
            List<Entry> more = book.farm(ask).written();
            more.forEach(entry -> found.put(entry.number(), entry));
            ask = more.stream().flatMap(Forewarned::behind).collect(Collectors.toSet());
            ask.removeAll(asked);
        }
        alone(Stock.MaterialListed.class).forEach(entry -> found.put(entry.number(), entry));
        alone(BookKeeping.CropAdded.class).forEach(entry -> found.put(entry.number(), entry));
        return found.values();
    }

    private static Stream<Place> behind(Entry entry) {
        boolean split = entry.fact() instanceof Land.BedSplit;
        return entry.fact().places().stream()
                .filter(place ->
                        place instanceof FieldId || place instanceof PileId || (split && place instanceof BedId));
    }

    /** What is in force of a kind, each by itself, without what it replaced. */
    private Stream<Entry> alone(Class<? extends Fact> kind) {
        return book.ofKind(kind).stream()
                .map(entry -> new Entry(
                        entry.number(),
                        entry.act(),
                        entry.sequence(),
                        entry.writtenAt(),
                        entry.writtenBy(),
                        entry.head().withoutCorrection(),
                        entry.fact()));
    }
}

package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.BookKeeping;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.FieldId;
import bedledger.language.Harvesting;
import bedledger.language.Lineage;
import bedledger.language.LotId;
import bedledger.language.MaterialName;
import bedledger.language.Place;
import bedledger.language.Selling;
import bedledger.language.Stock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One farm's record asked on one day, as the rules see it: what was done after that day is not there. */
public final class Inquiry {
    private final Farm farm;
    private final Settings settings;
    private final CropFacts crops;
    private final LocalDate asOf;
    private final Map<BedId, List<BedStep>> steps = new HashMap<>();
    private @Nullable Map<CropName, BookKeeping.CropAdded> added;
    private @Nullable Growing growing;
    private @Nullable Lineage lineage;

    public Inquiry(Farm farm, Settings settings, CropFacts crops, LocalDate asOf) {
        this.farm = farm;
        this.settings = settings;
        this.crops = crops;
        this.asOf = asOf;
    }

    Farm farm() {
        return farm;
    }

    LocalDate asOf() {
        return asOf;
    }

    boolean is(Reading reading) {
        return settings.is(reading);
    }

    /** The facts in force of one kind that were done by the day asked about, in the order of the work. */
    <F extends Fact> List<Done<F>> done(Class<F> kind) {
        return farm.ofKind(kind).stream()
                .filter(this::happened)
                .map(entry -> Done.of(entry, kind))
                .toList();
    }

    /** The same, of the entries that touch one place. */
    <F extends Fact> List<Done<F>> done(Place place, Class<F> kind) {
        return farm.entries(place).stream()
                .filter(entry -> kind.isInstance(entry.fact()) && happened(entry))
                .map(entry -> Done.of(entry, kind))
                .toList();
    }

    boolean happened(Entry entry) {
        return !entry.head().doneOn().isAfter(asOf);
    }

    List<BedId> beds() {
        return farm.beds();
    }

    /** The beds that lie in some fields on the day asked about. */
    List<BedId> beds(Collection<FieldId> fields) {
        return beds().stream()
                .filter(bed -> {
                    FieldId field = farm.bed(bed).on(asOf).field();
                    return field != null && fields.contains(field);
                })
                .toList();
    }

    /** The timeline of a bed up to the day asked about. */
    List<BedStep> steps(BedId bed) {
        return steps.computeIfAbsent(bed, this::walk);
    }

    private List<BedStep> walk(BedId bed) {
        Set<Long> own = farm.entries(bed).stream().map(Entry::number).collect(Collectors.toSet());
        return farm.bed(bed).steps().stream()
                .filter(step -> happened(step.entry()))
                .map(step -> new BedStep(step, own.contains(step.entry().number())))
                .toList();
    }

    /** The name of a material, and what its listings say is in it. */
    List<String> texts(MaterialName material) {
        List<String> texts = new ArrayList<>(List.of(material.name()));
        done(material, Stock.MaterialListed.class)
                .forEach(done -> Optional.ofNullable(done.fact().composition()).ifPresent(texts::add));
        return texts;
    }

    /** How a lot was sold, in the order of the work. */
    List<Sale> sales(LotId lot) {
        return done(lot, Selling.Sold.class).stream()
                .map(sold -> new Sale(lot, sold.fact().as(), sold.fact().invoice(), sold.number()))
                .toList();
    }

    /** By the entry of an application to beds: the lots picked from them afterwards, for so many years. */
    Map<Long, Set<LotId>> pickedAfter(Predicate<Fact> application, int years) {
        Map<Long, Set<LotId>> lots = new TreeMap<>();
        for (BedId bed : beds()) {
            List<BedStep> applied = new ArrayList<>();
            for (BedStep step : steps(bed)) {
                step.as(Harvesting.Harvested.class)
                        .ifPresent(harvest -> applied.stream()
                                .filter(use -> harvest.day().isBefore(use.day().plusYears(years)))
                                .forEach(use -> lots.computeIfAbsent(use.number(), number -> new LinkedHashSet<>())
                                        .add(harvest.fact().lot())));
                if (application.test(step.fact())) {
                    applied.add(step);
                }
            }
        }
        return lots;
    }

    Set<String> families(CropName crop) {
        Set<String> known = crops.families(crop);
        BookKeeping.CropAdded own = known.isEmpty() ? added(crop) : null;
        return own == null ? known : Set.of(own.family());
    }

    Optional<Content> nitrogen(String material) {
        return crops.nitrogen(material);
    }

    /** The C:N that a pile's feedstocks come to, in words. */
    Optional<String> mixed(Fertility.PileBuilt built) {
        return crops.mixed(built);
    }

    Contact contact(CropName crop) {
        Contact known = crops.contact(crop);
        BookKeeping.CropAdded own = known == Contact.UNKNOWN ? added(crop) : null;
        if (own == null || own.touchesSoil() == null) {
            return known;
        }
        return own.touchesSoil() ? Contact.TOUCHES_SOIL : Contact.CLEAR;
    }

    private BookKeeping.@Nullable CropAdded added(CropName crop) {
        Map<CropName, BookKeeping.CropAdded> known = added;
        if (known == null) {
            known = new HashMap<>();
            for (Done<BookKeeping.CropAdded> done : done(BookKeeping.CropAdded.class)) {
                known.put(done.fact().crop(), done.fact());
            }
            added = known;
        }
        return known.get(crop);
    }

    /** What was planted, and what was harvested from it. */
    Growing growing() {
        Growing known = growing;
        if (known == null) {
            known = Growing.of(this);
            growing = known;
        }
        return known;
    }

    /** Which lots were made of which. */
    Lineage lineage() {
        Lineage known = lineage;
        if (known == null) {
            known = Lineage.of(farm, asOf);
            lineage = known;
        }
        return known;
    }
}

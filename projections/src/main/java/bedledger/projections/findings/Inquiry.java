package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.BookKeeping;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.LotId;
import bedledger.language.Selling;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One farm's record asked on one day, as the rules see it: what was done after that day is not there. */
public final class Inquiry {
    private final Farm farm;
    private final Settings settings;
    private final CropFacts crops;
    private final LocalDate asOf;
    private final Map<BedId, List<BedStep>> steps = new HashMap<>();
    private final Map<CropName, BookKeeping.CropAdded> added = new HashMap<>();
    private final Map<LotId, List<Sale>> sales = new HashMap<>();
    private @Nullable Growing growing;

    public Inquiry(Farm farm, Settings settings, CropFacts crops, LocalDate asOf) {
        this.farm = farm;
        this.settings = settings;
        this.crops = crops;
        this.asOf = asOf;
        done(BookKeeping.CropAdded.class).forEach(done -> added.put(done.fact().crop(), done.fact()));
        done(Selling.Sold.class).forEach(this::addSale);
    }

    private void addSale(Done<Selling.Sold> sold) {
        sold.fact().lots().stream()
                .map(line -> line.lot())
                .distinct()
                .map(lot -> new Sale(lot, sold.fact().as(), sold.fact().invoice(), sold.number()))
                .forEach(sale -> sales.computeIfAbsent(sale.lot(), lot -> new ArrayList<>())
                        .add(sale));
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

    boolean happened(Entry entry) {
        return !entry.head().doneOn().isAfter(asOf);
    }

    List<BedId> beds() {
        return farm.beds();
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

    List<Sale> sales(LotId lot) {
        return sales.getOrDefault(lot, List.of());
    }

    Set<String> families(CropName crop) {
        Set<String> known = crops.families(crop);
        BookKeeping.CropAdded own = added.get(crop);
        return known.isEmpty() && own != null ? Set.of(own.family()) : known;
    }

    Contact contact(CropName crop) {
        Contact known = crops.contact(crop);
        BookKeeping.CropAdded own = added.get(crop);
        Boolean touches = own == null ? null : own.touchesSoil();
        if (known != Contact.UNKNOWN || touches == null) {
            return known;
        }
        return touches ? Contact.TOUCHES_SOIL : Contact.CLEAR;
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
}

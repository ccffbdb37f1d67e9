package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Step;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.estimate.ResidueEstimates;
import bedledger.projections.history.BedAreas;
import bedledger.projections.tables.Crop;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What every piece is worked out from. */
final class Basis {
    final Farm farm;
    final Tables tables;
    final ResidueEstimates residues;
    final BedAreas areas;
    final LocalDate asOf;
    final MassUnit unit;
    private final Map<BedId, Set<Long>> fitting = new HashMap<>();

    Basis(Farm farm, Tables tables, LocalDate asOf, MassUnit unit) {
        this.farm = farm;
        this.tables = tables;
        this.residues = new ResidueEstimates(tables);
        this.areas = new BedAreas(farm);
        this.asOf = asOf;
        this.unit = unit;
    }

    /** The steps of a bed by the day asked about that fit. */
    List<Step<BedState>> steps(BedId bed) {
        return farm.bed(bed).steps().stream()
                .filter(Step::fits)
                .filter(step -> !step.entry().head().doneOn().isAfter(asOf))
                .toList();
    }

    boolean fits(BedId bed, Entry entry) {
        return fitting.computeIfAbsent(
                        bed,
                        each -> steps(each).stream()
                                .map(step -> step.entry().number())
                                .collect(Collectors.toSet()))
                .contains(entry.number());
    }

    <F extends bedledger.language.Fact> List<Entry> done(Class<F> kind) {
        return farm.ofKind(kind).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(asOf))
                .toList();
    }

    /** The plain name of a crop, or what was typed where the tables do not know it. */
    String plain(CropName crop) {
        return tables.crop(crop.name()).map(Crop::name).orElse(crop.name());
    }

    boolean same(CropName one, CropName two) {
        return plain(one).equals(plain(two));
    }
}

package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.language.BedWork;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.Harvesting;
import bedledger.language.Misfit;
import bedledger.language.NaturalOrder;
import bedledger.language.Observation;
import bedledger.projections.history.Cropping;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What went back to the beds of a farm by the end of a day.
 *
 * @param pieces in order of day, bed, kind
 * @param standing croppings that had not ended: nothing of them is counted yet
 * @param left what quadrats cut after shredding found, in order of day
 * @param notCounted entries of which nothing could be counted for a bed
 * @param hauled what was carted off, in order of day; what went back is less by it
 * @param totals the pieces put together in several ways
 */
public record Returned(
        LocalDate asOf,
        List<Return> pieces,
        List<Cropping> standing,
        List<Left> left,
        List<NotCounted> notCounted,
        List<Hauled> hauled,
        Totals totals) {
    private static final Comparator<Return> ORDER = Comparator.comparing(Return::day)
            .thenComparing(piece -> piece.beds().get(0).bed().name(), NaturalOrder.INSTANCE)
            .thenComparing(Return::kind)
            .thenComparing(Return::what)
            .thenComparing(piece -> piece.entries().first());

    public Returned {
        pieces = List.copyOf(pieces);
        standing = List.copyOf(standing);
        left = List.copyOf(left);
        notCounted = List.copyOf(notCounted);
        hauled = List.copyOf(hauled);
    }

    public static Returned of(Farm farm, Tables tables, LocalDate asOf, Options options) {
        Basis basis = new Basis(farm, tables, asOf, options.unit());
        List<BedCases> beds =
                farm.beds().stream().map(bed -> new BedCases(basis, bed)).toList();
        List<CropCase> cases =
                beds.stream().flatMap(each -> each.cases().stream()).toList();
        List<Hauled> hauled = new ArrayList<>();
        List<Return> pieces = pieces(basis, cases, hauled);
        return new Returned(
                asOf,
                pieces,
                cases.stream()
                        .map(each -> each.cropping)
                        .filter(each -> each.end().isEmpty())
                        .toList(),
                left(new LeftReading(basis, pieces), beds),
                notCounted(basis, beds),
                hauled.stream()
                        .sorted(Comparator.<Hauled, LocalDate>comparing(
                                        each -> each.entry().head().doneOn())
                                .thenComparing(each -> each.entry().number())
                                .thenComparing(each -> each.beds().get(0).bed().name(), NaturalOrder.INSTANCE))
                        .toList(),
                new Totals(basis, pieces, options));
    }

    private static List<Return> pieces(Basis basis, List<CropCase> cases, List<Hauled> hauled) {
        List<Return> pieces = new ArrayList<>();
        for (CropGroup group : new CropGroups(basis, cases).groups()) {
            CropPieces cropping = new CropPieces(group);
            pieces.addAll(cropping.pieces());
            hauled.addAll(cropping.hauled());
        }
        pieces.addAll(new SpreadPieces(basis).pieces());
        pieces.addAll(new MulchPieces(basis).pieces());
        pieces.sort(ORDER);
        return pieces;
    }

    private static List<Left> left(LeftReading reading, List<BedCases> beds) {
        Stream<Left> known = beds.stream()
                .flatMap(bed -> bed.cases().stream())
                .flatMap(each -> each.cutAfter.stream().map(cut -> reading.of(each, cut)));
        Stream<Left> homeless =
                beds.stream().flatMap(bed -> bed.homelessCuts().stream().map(cut -> reading.homeless(bed.bed(), cut)));
        return Stream.concat(known, homeless)
                .sorted(Comparator.<Left, LocalDate>comparing(
                                each -> each.entry().head().doneOn())
                        .thenComparing(each -> each.bed().name(), NaturalOrder.INSTANCE)
                        .thenComparing(each -> each.entry().number()))
                .toList();
    }

    private static List<NotCounted> notCounted(Basis basis, List<BedCases> beds) {
        Stream<NotCounted> homeless = beds.stream().flatMap(each -> each.notCounted().stream());
        Stream<NotCounted> misfits = basis.farm.places().stream()
                .filter(BedId.class::isInstance)
                .map(BedId.class::cast)
                .flatMap(bed -> misfits(basis, bed));
        return Stream.concat(homeless, misfits)
                .sorted(Comparator.<NotCounted>comparingLong(
                                each -> each.entry().number())
                        .thenComparing(each -> each.bed().name(), NaturalOrder.INSTANCE))
                .toList();
    }

    private static Stream<NotCounted> misfits(Basis basis, BedId bed) {
        return basis.farm.bed(bed).steps().stream()
                .filter(step -> !step.fits() && bears(step.entry().fact()))
                .filter(step -> !step.entry().head().doneOn().isAfter(basis.asOf))
                .map(step -> new NotCounted(step.entry(), bed, "does not fit: " + why(step.misfits(), step.entry())));
    }

    private static String why(List<Misfit> misfits, Entry entry) {
        return misfits.stream().map(Misfit::why).collect(Collectors.joining("; ")) + " (#" + entry.number() + ")";
    }

    /** Whether a kind of fact changes what is counted. */
    private static boolean bears(Fact fact) {
        return fact instanceof Harvesting.Harvested
                || fact instanceof Fertility.Spread
                || fact instanceof BedWork.Mulched
                || fact instanceof BedWork.ResidueHauledOff
                || fact instanceof Observation.QuadratsCut;
    }
}

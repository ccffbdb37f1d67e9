package bedledger.cli.read;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.hours.InPlace;
import bedledger.projections.returned.Leaving;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import bedledger.projections.returned.Sum;
import bedledger.projections.returned.Supposing;
import bedledger.projections.returned.Total;
import java.io.PrintStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What returned would be under a supposition, beside what is recorded. */
final class Supposed {
    private static final List<Measure> SHOWN = List.of(Measure.DRY, Measure.CARBON, Measure.NITROGEN);

    private final ReadBook book;
    private final LocalDate day;
    private final String words;
    private final Supposing supposing;
    private final List<Leaving> leaving;
    private final List<Total> recorded;
    private final List<Total> supposed;
    private final InPlace inPlace;

    Supposed(ReadBook book, LocalDate day, String words, Supposing supposing, Returned returned, Options options) {
        this.book = book;
        this.day = day;
        this.words = words;
        this.supposing = supposing;
        Returned other = Returned.of(supposing.farm(), book.tables(), day, options);
        this.leaving = Leaving.of(supposing, returned, other);
        this.recorded = ofTheBeds(returned);
        this.supposed = ofTheBeds(other);
        this.inPlace = InPlace.of(book.farm(), LocalDate.MIN, day, List.of());
    }

    private List<Total> ofTheBeds(Returned returned) {
        Set<String> beds = supposing.hauls().stream()
                .map(haul -> haul.cropping().bed().name())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return returned.totals().byBed().stream()
                .filter(total -> beds.contains(total.of()))
                .toList();
    }

    SupposedView view() {
        List<SupposedView.BedView> beds = new ArrayList<>();
        for (int at = 0; at < recorded.size(); at++) {
            beds.add(SupposedView.bed(recorded.get(at), supposed.get(at)));
        }
        return new SupposedView(
                words,
                leaving.stream().map(SupposedView::leaving).toList(),
                beds,
                SupposedView.HaulingView.of(inPlace, minutes()),
                supposing.nothingOn().stream().map(BedId::name).toList());
    }

    /** Person-minutes that hauling off would have taken, by m² of the beds. */
    private Optional<Estimate> minutes() {
        double area = supposing.hauls().stream()
                .map(Supposing.HauledOff::cropping)
                .collect(Collectors.toMap(each -> each.bed(), each -> each.squareMetres(), Math::max))
                .values()
                .stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        return inPlace.hauling()
                .perSquareMetre()
                .map(rate -> Estimate.exact(area, "min").times(rate));
    }

    void print(PrintStream out) {
        MassUnit unit = book.massUnit();
        book.banner().forEach(out::println);
        paragraph(out, "If " + words + " (supposed, not written), in " + unit.name() + ": best (low–high)");
        TextTable table = new TextTable("what", "as recorded", "if hauled off", "leaves the bed");
        leaving.forEach(each -> rows(table, each, unit));
        for (int at = 0; at < recorded.size(); at++) {
            Total before = recorded.get(at);
            Total after = supposed.get(at);
            SHOWN.forEach(measure -> table.row(
                    before.of() + ", all by " + day + ", " + measure.words(),
                    sum(before.get(measure), unit),
                    sum(after.get(measure), unit),
                    ""));
        }
        table.lines().forEach(out::println);
        notes(out, table);
        leaving.forEach(each -> each.missing()
                .forEach(gap -> paragraph(
                        out,
                        "Incomplete: " + each.bed() + ", " + each.crop() + ", "
                                + each.kind().words() + ": " + gap)));
        supposing.nothingOn().forEach(bed -> paragraph(out, "Nothing had ended on " + bed + " by then."));
        hauling(out);
        out.println();
        paragraph(
                out,
                "What leaves is worked out with the same coefficients on both sides, so what is doubtful in both is not"
                        + " doubted twice. The crop, its evidence and all that was done later are left as recorded. "
                        + Estimate.RULE);
    }

    private static void rows(TextTable table, Leaving each, MassUnit unit) {
        String name = each.bed() + ", " + each.crop() + " to " + each.ended() + ", "
                + each.kind().words() + ", ";
        SHOWN.forEach(measure -> table.row(
                name + measure.words(),
                figure(each.recorded().get(measure), unit),
                figure(each.supposed().get(measure), unit),
                figure(each.leaves().get(measure), unit)));
    }

    private static String figure(Optional<Estimate> known, MassUnit unit) {
        return known.map(each -> Figure.band(each, unit.kilograms())).orElse("not known");
    }

    private static String sum(Sum sum, MassUnit unit) {
        return figure(sum.known(), unit) + (sum.isComplete() || sum.known().isEmpty() ? "" : " *");
    }

    private static void notes(PrintStream out, TextTable table) {
        if (table.lines().stream().anyMatch(line -> line.contains(" *"))) {
            paragraph(out, "* incomplete: not known for every piece; the sum is of what is known.");
        }
        if (table.lines().stream().anyMatch(line -> line.contains("†"))) {
            paragraph(out, "† no range is known for some coefficient in it; the true doubt is wider than shown.");
        }
    }

    private void hauling(PrintStream out) {
        Optional<Estimate> minutes = minutes();
        if (minutes.isEmpty()) {
            paragraph(out, "Hours of hauling: incomplete: " + inPlace.missing().get(0) + ".");
            return;
        }
        paragraph(
                out,
                "Hours of hauling: about " + Figure.band(minutes.get(), 1) + " person-minutes for these beds, by this"
                        + " farm's own " + inPlace.hauling().timed() + " timed of "
                        + inPlace.hauling().acts()
                        + " haul-offs" + HoursCommand.numbered(inPlace.hauling().entries()) + ", by area.");
    }

    private static void paragraph(PrintStream out, String text) {
        TextTable.wrapped(text, 80).forEach(out::println);
    }
}

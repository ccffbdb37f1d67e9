package bedledger.cli.read;

import bedledger.cli.read.ReturnedView.FigureView;
import bedledger.cli.read.ReturnedView.SumView;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.hours.InPlace;
import bedledger.projections.returned.Leaving;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Total;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What {@code returned --if-hauled-off} found; masses in kg, work in person-minutes.
 *
 * @param supposed in words; nothing of it is written
 */
record SupposedView(
        String supposed, List<LeavingView> leaving, List<BedView> beds, HaulingView hauling, List<String> nothingOn) {

    /** Shoots or roots of one crop in one bed. */
    record LeavingView(
            String bed,
            String crop,
            String ended,
            String source,
            Map<String, ThreeView> kilograms,
            List<String> missing) {}

    /** A figure as recorded, as supposed, and what leaves; each missing where it is not known. */
    record ThreeView(
            @Nullable FigureView recorded,
            @Nullable FigureView supposed,
            @Nullable FigureView leaves) {
        static ThreeView of(Optional<Estimate> recorded, Optional<Estimate> supposed, Optional<Estimate> leaves) {
            return new ThreeView(
                    recorded.map(FigureView::of).orElse(null),
                    supposed.map(FigureView::of).orElse(null),
                    leaves.map(FigureView::of).orElse(null));
        }
    }

    /** All that went back to a bed. */
    record BedView(String bed, Map<String, SumView> recorded, Map<String, SumView> supposed) {}

    /** What hauling would have taken, by the farm's own timed acts. */
    record HaulingView(
            int timedHauls, int timedFlailings, @Nullable FigureView minutes, List<String> missing) {
        static HaulingView of(InPlace inPlace, Optional<Estimate> minutes) {
            return new HaulingView(
                    inPlace.hauling().timed(),
                    inPlace.flailing().timed(),
                    minutes.map(FigureView::of).orElse(null),
                    inPlace.missing());
        }
    }

    static LeavingView leaving(Leaving each) {
        Map<String, ThreeView> kilograms = new LinkedHashMap<>();
        for (Measure measure : Measure.values()) {
            Optional<Estimate> recorded = each.recorded().get(measure);
            if (recorded.isPresent()) {
                kilograms.put(
                        measure.words(),
                        ThreeView.of(
                                recorded,
                                each.supposed().get(measure),
                                each.leaves().get(measure)));
            }
        }
        return new LeavingView(
                each.bed().name(),
                each.crop(),
                each.ended().toString(),
                each.kind().words(),
                kilograms,
                each.missing());
    }

    static BedView bed(Total recorded, Total supposed) {
        return new BedView(recorded.of(), sums(recorded), sums(supposed));
    }

    private static Map<String, SumView> sums(Total total) {
        Map<String, SumView> sums = new LinkedHashMap<>();
        total.measures().forEach((measure, sum) -> sums.put(measure.words(), SumView.of(sum)));
        return sums;
    }

    Output.Table table() {
        List<String> header = new ArrayList<>(List.of("bed", "crop", "ended", "source", "measure"));
        for (String column : List.of("recorded", "supposed", "leaves")) {
            header.addAll(List.of(column + "_kg_low", column + "_kg_best", column + "_kg_high"));
        }
        header.add("missing");
        List<List<String>> rows = new ArrayList<>();
        for (LeavingView each : leaving) {
            each.kilograms().forEach((measure, three) -> {
                List<String> row =
                        new ArrayList<>(List.of(each.bed(), each.crop(), each.ended(), each.source(), measure));
                row.addAll(ReturnedView.cells(three.recorded()));
                row.addAll(ReturnedView.cells(three.supposed()));
                row.addAll(ReturnedView.cells(three.leaves()));
                row.add(String.join("; ", each.missing()));
                rows.add(row);
            });
        }
        return new Output.Table(header, rows);
    }
}

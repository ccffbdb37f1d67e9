package bedledger.cli.read;

import bedledger.cli.read.ReturnedView.FigureView;
import bedledger.projections.hours.Hours;
import bedledger.projections.hours.HoursLine;
import bedledger.projections.hours.InPlace;
import bedledger.projections.hours.OwnRate;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What {@code hours --json} prints; work in person-minutes. */
record HoursView(
        boolean practice,
        String farm,
        String from,
        String to,
        @Nullable String asKnownOn,
        String by,
        LineView all,
        List<LineView> lines,
        InPlaceView inPlace) {

    /** Work under one heading; {@code minutes} missing where none are on record. */
    record LineView(
            String of, int steps, int withMinutes, @Nullable Double minutes, boolean byArea, List<Long> entries) {
        static LineView of(HoursLine line) {
            return new LineView(
                    line.of(),
                    line.steps(),
                    line.withMinutes(),
                    line.withMinutes() == 0 ? null : line.minutes(),
                    line.byArea(),
                    List.copyOf(line.entries()));
        }
    }

    /** How long one kind of work took on this farm. */
    record RateView(
            String operation,
            int acts,
            int timed,
            @Nullable FigureView perSquareMetre,
            int weighed,
            @Nullable FigureView perKilogram,
            List<Long> entries) {
        static RateView of(OwnRate rate) {
            return new RateView(
                    rate.operation(),
                    rate.acts(),
                    rate.timed(),
                    rate.perSquareMetre().map(FigureView::of).orElse(null),
                    rate.weighed(),
                    rate.perKilogram().map(FigureView::of).orElse(null),
                    List.copyOf(rate.entries()));
        }
    }

    /** What leaving residue in place saved. */
    record InPlaceView(
            int flips,
            double squareMetres,
            RateView hauling,
            RateView flailing,
            @Nullable FigureView hauled,
            @Nullable FigureView saved,
            List<String> missing) {
        static InPlaceView of(InPlace inPlace) {
            return new InPlaceView(
                    inPlace.flips(),
                    inPlace.squareMetres(),
                    RateView.of(inPlace.hauling()),
                    RateView.of(inPlace.flailing()),
                    inPlace.hauled().map(FigureView::of).orElse(null),
                    inPlace.saved().map(FigureView::of).orElse(null),
                    inPlace.missing());
        }
    }

    static HoursView of(ReadBook book, String by, Hours hours, List<HoursLine> lines, InPlace inPlace) {
        return new HoursView(
                book.opened().practice(),
                book.opened().farm(),
                hours.from().toString(),
                hours.to().toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                by,
                LineView.of(hours.all()),
                Each.of(lines, LineView::of),
                InPlaceView.of(inPlace));
    }

    Output.Table table() {
        return new Output.Table(
                List.of("of", "person_minutes", "steps", "with_minutes", "by_area", "entries"),
                lines.stream()
                        .map(line -> List.of(
                                line.of(),
                                line.minutes() == null ? "" : Double.toString(line.minutes()),
                                Integer.toString(line.steps()),
                                Integer.toString(line.withMinutes()),
                                Boolean.toString(line.byArea()),
                                line.entries().stream().map(String::valueOf).collect(Collectors.joining(" "))))
                        .toList());
    }
}

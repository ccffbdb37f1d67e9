package bedledger.cli.read;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.history.Cropping;
import bedledger.projections.returned.Left;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import bedledger.projections.returned.SourceKind;
import bedledger.projections.returned.Sum;
import bedledger.projections.returned.Total;
import bedledger.projections.tables.Coefficient;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What {@code returned --json} prints; masses in kg.
 *
 * @param rule how low and high are combined
 */
record ReturnedView(
        boolean practice,
        String farm,
        String on,
        @Nullable String asKnownOn,
        String by,
        String rule,
        List<TotalView> totals,
        List<PieceView> pieces,
        List<LeftView> left,
        List<String> stillStanding,
        List<String> notCounted,
        @Nullable SupposedView supposed) {

    /** A figure: low, best, high; without a band its range is not known or nothing is doubted. */
    record FigureView(
            double low, double best, double high, boolean oneSided, boolean clipped, List<String> rangeUnknownFor) {
        static FigureView of(Estimate estimate) {
            return new FigureView(
                    estimate.low(),
                    estimate.best(),
                    estimate.high(),
                    estimate.isOneSided(),
                    estimate.isClipped(),
                    List.copyOf(estimate.rangeUnknownFor()));
        }
    }

    /** A sum of pieces; {@code unknown} of {@code pieces} are left out for want of a figure. */
    record SumView(@Nullable FigureView kilograms, int pieces, int unknown) {
        static SumView of(Sum sum) {
            return new SumView(sum.known().map(FigureView::of).orElse(null), sum.pieces(), sum.unknown());
        }
    }

    /** One total. */
    record TotalView(
            String of,
            @Nullable Double squareMetres,
            Map<String, SumView> measures,
            Map<String, SumView> dryBySource,
            SumView measured,
            SumView estimated,
            @Nullable FigureView carbonToNitrogen,
            int typicalLeftOut,
            boolean sharedByArea,
            List<Long> entries) {}

    /** One piece. */
    record PieceView(
            String day,
            String source,
            String what,
            String evidence,
            List<ShareView> beds,
            Map<String, FigureView> kilograms,
            @Nullable FigureView carbonToNitrogen,
            String method,
            List<String> words,
            List<String> coefficients,
            List<Long> entries) {}

    /** One bed's share of a piece. */
    record ShareView(String bed, double squareMetres, double share, boolean byArea) {}

    /** What quadrats cut after shredding found. */
    record LeftView(
            String bed,
            long entry,
            String day,
            @Nullable FigureView dryKilograms,
            @Nullable FigureView returnedKilograms,
            @Nullable Boolean overlaps,
            List<String> words) {}

    static ReturnedView of(
            ReadBook book,
            LocalDate day,
            String by,
            Returned returned,
            List<Return> pieces,
            List<Total> totals,
            @Nullable SupposedView supposed) {
        Map<Coefficient, String> said = new HashMap<>();
        return new ReturnedView(
                book.opened().practice(),
                book.opened().farm(),
                day.toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                by,
                Estimate.RULE,
                Each.of(totals, ReturnedView::total),
                Each.of(pieces, piece -> piece(piece, said)),
                returned.left().stream().map(ReturnedView::left).toList(),
                returned.standing().stream().map(ReturnedView::standing).toList(),
                returned.notCounted().stream()
                        .map(not -> "#" + not.entry().number() + " on " + not.bed() + ": " + not.why())
                        .toList(),
                supposed);
    }

    private static String standing(Cropping cropping) {
        return cropping.crop() + " in " + cropping.bed();
    }

    private static TotalView total(Total total) {
        Map<String, SumView> measures = new LinkedHashMap<>();
        total.measures().forEach((measure, sum) -> measures.put(measure.words(), SumView.of(sum)));
        Map<String, SumView> sources = new LinkedHashMap<>();
        Arrays.stream(SourceKind.values())
                .forEach(kind -> Optional.ofNullable(total.dryByKind().get(kind))
                        .ifPresent(sum -> sources.put(kind.words(), SumView.of(sum))));
        return new TotalView(
                total.of(),
                total.squareMetres().isPresent() ? total.squareMetres().getAsDouble() : null,
                measures,
                sources,
                SumView.of(total.measured()),
                SumView.of(total.estimated()),
                total.carbonToNitrogen().map(FigureView::of).orElse(null),
                total.typicalLeftOut(),
                total.sharedByArea(),
                List.copyOf(total.entries()));
    }

    private static PieceView piece(Return piece, Map<Coefficient, String> said) {
        Map<String, FigureView> kilograms = new LinkedHashMap<>();
        for (Measure measure : Measure.values()) {
            piece.matter().get(measure).ifPresent(known -> kilograms.put(measure.words(), FigureView.of(known)));
        }
        return new PieceView(
                piece.day().toString(),
                piece.kind().words(),
                piece.what(),
                piece.evidence().words(),
                piece.beds().stream()
                        .map(share ->
                                new ShareView(share.bed().name(), share.squareMetres(), share.share(), share.byArea()))
                        .toList(),
                kilograms,
                piece.matter().carbonToNitrogen().map(FigureView::of).orElse(null),
                piece.method(),
                piece.words(),
                piece.coefficients().stream()
                        .map(coefficient -> said.computeIfAbsent(coefficient, ReturnedView::words))
                        .toList(),
                List.copyOf(piece.entries()));
    }

    private static String words(Coefficient c) {
        return c.inWords() + " (" + c.citation().status().words() + ", "
                + c.citation().source() + ", edition " + c.citation().edition() + ")";
    }

    private static LeftView left(Left left) {
        return new LeftView(
                left.bed().name(),
                left.entry().number(),
                left.entry().head().doneOn().toString(),
                left.dry().map(FigureView::of).orElse(null),
                left.returned().map(FigureView::of).orElse(null),
                left.overlaps().orElse(null),
                left.words());
    }

    Output.Table table() {
        if (supposed != null) {
            return supposed.table();
        }
        return by.equals("piece") ? piecesTable() : totalsTable();
    }

    private Output.Table totalsTable() {
        List<String> header = new ArrayList<>(List.of("of", "square_metres"));
        for (Measure measure : Measure.values()) {
            header.addAll(List.of(
                    measure.words() + "_kg_low",
                    measure.words() + "_kg_best",
                    measure.words() + "_kg_high",
                    measure.words() + "_unknown"));
        }
        header.addAll(List.of("c_to_n", "shared_by_area", "entries"));
        return new Output.Table(header, Each.of(totals, this::row));
    }

    private List<String> row(TotalView total) {
        List<String> row = new ArrayList<>(
                List.of(total.of(), total.squareMetres() == null ? "" : Double.toString(total.squareMetres())));
        for (Measure measure : Measure.values()) {
            SumView sum = total.measures().getOrDefault(measure.words(), new SumView(null, 0, 0));
            row.addAll(cells(sum.kilograms()));
            row.add(Integer.toString(sum.unknown()));
        }
        row.add(
                total.carbonToNitrogen() == null
                        ? ""
                        : Double.toString(total.carbonToNitrogen().best()));
        row.add(Boolean.toString(total.sharedByArea()));
        row.add(entries(total.entries()));
        return row;
    }

    private Output.Table piecesTable() {
        List<String> header = new ArrayList<>(List.of("day", "beds", "source", "what", "evidence"));
        for (Measure measure : Measure.values()) {
            header.addAll(
                    List.of(measure.words() + "_kg_low", measure.words() + "_kg_best", measure.words() + "_kg_high"));
        }
        header.addAll(List.of("c_to_n", "method", "words", "entries"));
        return new Output.Table(header, Each.of(pieces, ReturnedView::row));
    }

    private static List<String> row(PieceView piece) {
        List<String> row = new ArrayList<>(List.of(
                piece.day(),
                piece.beds().stream().map(ShareView::bed).collect(Collectors.joining(" ")),
                piece.source(),
                piece.what(),
                piece.evidence()));
        for (Measure measure : Measure.values()) {
            row.addAll(cells(piece.kilograms().get(measure.words())));
        }
        row.add(
                piece.carbonToNitrogen() == null
                        ? ""
                        : Double.toString(piece.carbonToNitrogen().best()));
        row.add(piece.method());
        row.add(String.join("; ", piece.words()));
        row.add(entries(piece.entries()));
        return row;
    }

    static List<String> cells(@Nullable FigureView figure) {
        return figure == null
                ? List.of("", "", "")
                : List.of(
                        Double.toString(figure.low()), Double.toString(figure.best()), Double.toString(figure.high()));
    }

    private static String entries(List<Long> entries) {
        return entries.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }
}

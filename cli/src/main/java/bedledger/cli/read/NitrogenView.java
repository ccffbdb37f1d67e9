package bedledger.cli.read;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.nitrogen.Following;
import bedledger.projections.nitrogen.Nitrogen;
import bedledger.projections.nitrogen.NitrogenTotal;
import bedledger.projections.nitrogen.OtherWay;
import bedledger.projections.nitrogen.Release;
import bedledger.projections.nitrogen.Uncaught;
import bedledger.projections.nitrogen.Verdict;
import bedledger.projections.phosphorus.PhosphorusBalance;
import bedledger.projections.returned.Sum;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What {@code nitrogen --json} prints; kg, nitrogen below 0 is locked up. */
record NitrogenView(
        boolean practice,
        String farm,
        String on,
        @Nullable String asKnownOn,
        String by,
        String answer,
        String weather,
        String rule,
        List<TotalView> totals,
        List<ReleaseView> releases,
        List<PhosphorusView> phosphorus,
        SupposedNitrogen.@Nullable View supposed) {
    /** A sum of pieces; {@code unknown} of {@code pieces} are left out for want of a figure. */
    record SumView(@Nullable Sourced figure, int pieces, int unknown) {
        static SumView of(Sum sum) {
            return new SumView(Sourced.orNull(sum.known()), sum.pieces(), sum.unknown());
        }
    }

    /** One total. */
    record TotalView(
            String of,
            @Nullable Double squareMetres,
            SumView nitrogen,
            SumView freed,
            SumView inTheEnd,
            SumView coverCropLine,
            SumView amendments,
            SumView onLeakyDays,
            SumView underTarp,
            SumView beforeNextCrop,
            SumView duringNextCrop,
            long leakyDays,
            List<String> nextCrops,
            List<Long> entries) {
        static TotalView of(NitrogenTotal total) {
            return new TotalView(
                    total.of(),
                    total.squareMetres().isPresent() ? total.squareMetres().getAsDouble() : null,
                    SumView.of(total.nitrogen()),
                    SumView.of(total.freed()),
                    SumView.of(total.inTheEnd()),
                    SumView.of(total.coverCropLine()),
                    SumView.of(total.amendments()),
                    SumView.of(total.onLeakyDays()),
                    SumView.of(total.underTarp()),
                    SumView.of(total.before()),
                    SumView.of(total.during()),
                    total.leakyDays(),
                    total.nextCrops(),
                    List.copyOf(total.entries()));
        }
    }

    /** One piece on one bed. */
    record ReleaseView(
            String bed,
            String day,
            String source,
            String what,
            @Nullable String workedIn,
            @Nullable Sourced normalisedDays,
            @Nullable Sourced nitrogen,
            @Nullable Sourced freed,
            @Nullable Sourced inTheEnd,
            @Nullable OtherWayView otherWay,
            @Nullable BandView bothWays,
            @Nullable NextView next,
            @Nullable UncaughtView uncaught,
            boolean highNitrogenInAutumn,
            List<String> missing,
            List<String> words,
            List<Long> entries) {}

    /** What another published rule gives. */
    record OtherWayView(String rule, Sourced figure) {
        static OtherWayView of(OtherWay other) {
            return new OtherWayView(other.rule(), Sourced.of(other.kilograms()));
        }
    }

    /** From the lowest end of both answers to the highest, kg. */
    record BandView(double low, double high) {}

    /** The crop planted next. */
    record NextView(
            String crop,
            boolean cover,
            String planted,
            String until,
            boolean ended,
            @Nullable Sourced before,
            @Nullable Sourced during,
            @Nullable String verdict) {
        static NextView of(Following next) {
            return new NextView(
                    next.crop().name(),
                    next.cover(),
                    next.planted().toString(),
                    next.until().toString(),
                    next.ended(),
                    Sourced.orNull(next.before()),
                    Sourced.orNull(next.during()),
                    next.verdict().map(Verdict::words).orElse(null));
        }
    }

    /** Days with nothing growing. */
    record UncaughtView(
            String until,
            long leakyDays,
            long tarpedDays,
            @Nullable Sourced onLeakyDays,
            @Nullable Sourced underTarp) {
        static UncaughtView of(Uncaught uncaught) {
            return new UncaughtView(
                    uncaught.until().toString(),
                    uncaught.leakyDays(),
                    uncaught.tarpedDays(),
                    Sourced.orNull(uncaught.onLeakyDays()),
                    Sourced.orNull(uncaught.underTarp()));
        }
    }

    /** Phosphorus of one bed in one season, kg P. */
    record PhosphorusView(
            String bed,
            String season,
            SumView broughtIn,
            SumView sold,
            @Nullable Sourced surplus,
            @Nullable String soilTest,
            List<String> missing,
            List<Long> entries) {}

    static NitrogenView of(
            ReadBook book,
            LocalDate day,
            String by,
            String answer,
            Nitrogen nitrogen,
            List<Release> releases,
            List<NitrogenTotal> totals,
            List<PhosphorusView> phosphorus,
            SupposedNitrogen.@Nullable View supposed) {
        return new NitrogenView(
                book.opened().practice(),
                book.opened().farm(),
                day.toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                by,
                answer,
                nitrogen.weather(),
                Estimate.RULE,
                Each.of(totals, TotalView::of),
                Each.of(releases, NitrogenView::release),
                phosphorus,
                supposed);
    }

    private static ReleaseView release(Release release) {
        return new ReleaseView(
                release.bed().name(),
                release.piece().day().toString(),
                release.piece().kind().words(),
                release.piece().what(),
                release.workedIn().map(LocalDate::toString).orElse(null),
                Sourced.orNull(release.normalisedDays()),
                Sourced.orNull(release.nitrogen()),
                Sourced.orNull(release.freed()),
                Sourced.orNull(release.inTheEnd()),
                release.otherWay().map(OtherWayView::of).orElse(null),
                release.both()
                        .map(band -> new BandView(band.low(), band.high()))
                        .orElse(null),
                release.following().map(NextView::of).orElse(null),
                release.uncaught().map(UncaughtView::of).orElse(null),
                release.highNitrogenInAutumn(),
                release.missing(),
                release.words(),
                List.copyOf(release.piece().entries()));
    }

    static PhosphorusView phosphorus(PhosphorusBalance balance, @Nullable String soilTest) {
        return new PhosphorusView(
                balance.bed().name(),
                balance.season(),
                SumView.of(balance.broughtIn()),
                SumView.of(balance.sold()),
                Sourced.orNull(balance.surplus()),
                soilTest,
                balance.missing(),
                List.copyOf(balance.entries()));
    }

    Output.Table table() {
        List<String> header = new ArrayList<>(List.of("of", "square_metres"));
        for (String figure : List.of(
                "nitrogen",
                "freed",
                "in_the_end",
                "pnw_636",
                "rb209",
                "on_leaky_days",
                "under_tarp",
                "before_next_crop",
                "during_next_crop")) {
            header.addAll(List.of(figure + "_kg_low", figure + "_kg_best", figure + "_kg_high", figure + "_unknown"));
        }
        header.addAll(List.of("leaky_days", "next_crops", "entries"));
        return new Output.Table(header, Each.of(totals, NitrogenView::row));
    }

    private static List<String> row(TotalView total) {
        List<String> row = new ArrayList<>(
                List.of(total.of(), total.squareMetres() == null ? "" : Double.toString(total.squareMetres())));
        for (SumView sum : List.of(
                total.nitrogen(),
                total.freed(),
                total.inTheEnd(),
                total.coverCropLine(),
                total.amendments(),
                total.onLeakyDays(),
                total.underTarp(),
                total.beforeNextCrop(),
                total.duringNextCrop())) {
            row.addAll(Sourced.cells(sum.figure()));
            row.add(Integer.toString(sum.unknown()));
        }
        row.add(Long.toString(total.leakyDays()));
        row.add(String.join(" ", total.nextCrops()));
        row.add(total.entries().stream().map(String::valueOf).collect(Collectors.joining(" ")));
        return row;
    }
}

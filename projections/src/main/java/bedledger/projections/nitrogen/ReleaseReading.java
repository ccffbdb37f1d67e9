package bedledger.projections.nitrogen;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.history.Cropping;
import bedledger.projections.history.Croppings;
import bedledger.projections.returned.BedShare;
import bedledger.projections.returned.Matter;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.SourceKind;
import bedledger.projections.tables.Parameter;
import bedledger.projections.tables.Parameters;
import bedledger.projections.weather.SoilWarmth;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Works out the nitrogen of one piece on one bed. */
final class ReleaseReading {
    private static final double SQUARE_METRES_IN_A_HECTARE = 10_000;

    private final Farm farm;
    private final LocalDate asOf;
    private final Parameters table = Parameters.of("residue-turnover");
    private final Amendments amendments = new Amendments();
    private final CoverCropLine line = new CoverCropLine(table);
    private final ResidueFigures figures;
    private final NormalisedDays days;
    private final Map<BedId, BedClock> clocks = new HashMap<>();
    private final Map<BedId, BedSpans> spans = new HashMap<>();
    private final Map<BedId, List<Cropping>> croppings = new HashMap<>();

    ReleaseReading(Farm farm, Weather weather, LocalDate first, LocalDate asOf) {
        this.farm = farm;
        this.asOf = asOf;
        this.figures = new ResidueFigures(table);
        this.days = new NormalisedDays(table, new SoilWarmth(weather), first, asOf);
    }

    Release of(Return piece, BedShare share) {
        Matter matter = piece.on(share.bed());
        if (matter.dry().filter(dry -> dry.best() == 0).isPresent()) {
            return nothing(piece, share);
        }
        Saying saying = new Saying();
        return piece.kind() == SourceKind.COMPOST
                        || piece.kind() == SourceKind.MANURE
                        || piece.kind() == SourceKind.MATERIAL
                ? amendment(piece, share, matter, saying)
                : residue(piece, share, matter, saying);
    }

    /** What was hauled off to the last leaf sets nothing free and locks nothing up: that is known, whatever was in it. */
    private Release nothing(Return piece, BedShare share) {
        Optional<Estimate> none = Optional.of(Estimate.exact(0, "kg").by("nothing went back"));
        return new Release(
                share.bed(),
                share.squareMetres(),
                piece,
                none,
                Optional.empty(),
                Optional.empty(),
                none,
                none,
                piece.kind().isShoots()
                        ? none.map(each -> new OtherWay(OtherWay.COVER_CROP_LINE, each))
                        : Optional.empty(),
                next(share.bed(), piece.day()).map(each -> following(each, Optional.empty(), none, none)),
                Optional.of(new Uncaught(piece.day(), 0, 0, none, none)),
                false,
                List.of(),
                List.of("nothing went back"));
    }

    private Release amendment(Return piece, BedShare share, Matter matter, Saying saying) {
        if (matter.nitrogen().isEmpty()) {
            saying.missing("its nitrogen");
        }
        Optional<Estimate> available = amendments.toTheNextCrop(piece.what(), matter.nitrogen());
        if (matter.nitrogen().isPresent() && available.isEmpty()) {
            saying.missing("which share of its nitrogen the next crop can use: no table has a row for it");
        }
        saying.word("of manures and composts only the next crop's share is known, not the day it comes");
        return new Release(
                share.bed(),
                share.squareMetres(),
                piece,
                matter.nitrogen(),
                workedIn(share.bed(), piece).map(entry -> entry.head().doneOn()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                available.map(each -> new OtherWay(OtherWay.RB209, each)),
                next(share.bed(), piece.day())
                        .map(each -> following(each, Optional.empty(), Optional.empty(), Optional.empty())),
                Optional.empty(),
                false,
                saying.missing(),
                saying.words());
    }

    private Release residue(Return piece, BedShare share, Matter matter, Saying saying) {
        Optional<Entry> worked = piece.kind().isRoots() ? Optional.empty() : workedIn(share.bed(), piece);
        Optional<ResidueCase> known = residueCase(piece, share, matter, worked, saying);
        Optional<ResidueCase> timed = known.filter(each -> timed(each, saying));
        return new Release(
                share.bed(),
                share.squareMetres(),
                piece,
                matter.nitrogen(),
                piece.kind().isRoots()
                        ? Optional.of(piece.day())
                        : worked.map(entry -> entry.head().doneOn()),
                timed.map(each -> figures.normalisedDays(each, asOf)),
                timed.map(each -> figures.freed(each, asOf)),
                known.map(figures::inTheEnd),
                piece.kind().isShoots()
                        ? line.toTheNextCrop(matter).map(each -> new OtherWay(OtherWay.COVER_CROP_LINE, each))
                        : Optional.empty(),
                next(share.bed(), piece.day())
                        .map(each -> following(
                                each, timed, timed.map(one -> figures.freed(one, each.since())), Optional.empty())),
                timed.map(this::uncaught),
                known.filter(each -> richInAutumn(each, worked, saying)).isPresent(),
                saying.missing(),
                saying.words());
    }

    private boolean timed(ResidueCase known, Saying saying) {
        int unknown = figures.daysWithoutWeather(known, asOf);
        if (unknown > 0) {
            saying.missing("when it comes: no temperature is known on " + unknown + " of "
                    + ChronoUnit.DAYS.between(known.day(), asOf) + " days");
        }
        return unknown == 0;
    }

    private Optional<ResidueCase> residueCase(
            Return piece, BedShare share, Matter matter, Optional<Entry> worked, Saying saying) {
        if (matter.nitrogen().isEmpty() || matter.carbonToNitrogen().isEmpty()) {
            saying.missing("its nitrogen or its C:N");
            return Optional.empty();
        }
        Estimate ratio = matter.carbonToNitrogen().get();
        saying.aboutRatio(figures.isCapped(ratio.best()), ratio);
        saying.aboutPlace(piece, worked);
        return Optional.of(new ResidueCase(
                spans(share.bed()),
                clock(share.bed()),
                piece.day(),
                matter.nitrogen().get(),
                share.squareMetres(),
                worked.map(entry -> entry.head().doneOn())
                        .or(() -> piece.kind().isRoots() ? Optional.of(piece.day()) : Optional.empty()),
                figures.parts(
                        matter.nitrogen().get(),
                        ratio,
                        matter.dry().orElse(Estimate.exact(0, "kg")),
                        buried(piece, worked))));
    }

    /** The share of it that lies in the soil once it was worked in. */
    private Estimate buried(Return piece, Optional<Entry> worked) {
        if (piece.kind().isRoots()) {
            return Estimate.exact(1, "");
        }
        if (worked.isEmpty()) {
            return Estimate.exact(0, "");
        }
        return BedSpans.isHarrowing(worked.get())
                ? Derived.of(table.get("harrow", "share worked in"))
                : Estimate.exact(1, "");
    }

    private Optional<Entry> workedIn(BedId bed, Return piece) {
        return spans(bed).workedIn(piece.day());
    }

    private BedSpans spans(BedId bed) {
        return spans.computeIfAbsent(bed, each -> new BedSpans(farm, each, asOf));
    }

    private BedClock clock(BedId bed) {
        return clocks.computeIfAbsent(bed, each -> new BedClock(spans(each), days, asOf));
    }

    private Optional<Cropping> next(BedId bed, LocalDate day) {
        return croppings.computeIfAbsent(bed, each -> Croppings.of(farm, each, asOf)).stream()
                .filter(each -> !each.since().isBefore(day))
                .findFirst();
    }

    /** Set free before and during the next crop; what is known without its course is given as {@code plain}. */
    private Following following(
            Cropping next, Optional<ResidueCase> timed, Optional<Estimate> before, Optional<Estimate> plain) {
        LocalDate until = next.ended().orElse(asOf);
        return new Following(
                next.crop(),
                next.cover(),
                next.since(),
                until,
                next.ended().isPresent(),
                before,
                timed.map(each -> figures.freedBetween(each, next.since(), until))
                        .or(() -> plain));
    }

    private Uncaught uncaught(ResidueCase known) {
        LocalDate end = known.day().plusDays((long) table.value("leak", "looked at for"));
        LocalDate until = end.isAfter(asOf) ? asOf : end;
        List<Span> spans = known.spans(until);
        return new Uncaught(
                until,
                ResidueCase.days(spans, Ground::isLeaky),
                ResidueCase.days(spans, ground -> ground == Ground.TARPED),
                Optional.of(figures.freedOn(known, spans, Ground::isLeaky)),
                Optional.of(figures.freedOn(known, spans, ground -> ground == Ground.TARPED)));
    }

    /** Agneessens and De Neve 2014, in words only; the months and the threshold are a judgement. What locks nitrogen up leaches none. */
    private boolean richInAutumn(ResidueCase known, Optional<Entry> worked, Saying saying) {
        double perHectare = known.nitrogen().best() / known.squareMetres() * SQUARE_METRES_IN_A_HECTARE;
        if (worked.isEmpty() || known.squareMetres() <= 0 || perHectare < threshold("much nitrogen")) {
            return false;
        }
        if (figures.inTheEnd(known).best() <= 0) {
            return false;
        }
        LocalDate day = worked.get().head().doneOn();
        int month = day.getMonthValue();
        boolean autumn = month >= threshold("first month") && month <= threshold("last month");
        boolean sownSoon = known.spans().between(day, day.plusDays((long) threshold("planted within"))).stream()
                .anyMatch(span -> span.ground() == Ground.LIVING);
        if (autumn && !sownSoon) {
            saying.word("worked in on " + day + " with " + Math.round(perHectare)
                    + " kg N/ha in it and nothing sown soon after: at risk of leaching over winter (Agneessens & De Neve"
                    + " 2014; months of the northern autumn and the threshold of "
                    + Math.round(threshold("much nitrogen")) + " kg N/ha are a judgement)");
        }
        return autumn && !sownSoon;
    }

    private double threshold(String name) {
        Parameter parameter = table.get("autumn", name);
        return parameter.value();
    }
}

package bedledger.projections.breakdown;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.Step;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Evidence;
import bedledger.projections.returned.Return;
import bedledger.projections.weather.SoilWarmth;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads one bed that waits. */
final class BedReading {
    static final String WEATHER_WAY_OUT =
            "put a weather file or monthly normals into the book (bedledger weather --add FILE),"
                    + " or note the days (bedledger did weather)";
    private final Pieces pieces;
    private final Map<String, FarmRate> rates;
    private final BedId bed;
    private final Optional<Double> cover;
    private final BedState state;
    private final double squareMetres;
    private final List<String> missing = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final List<Going> going = new ArrayList<>();

    BedReading(Pieces pieces, Map<String, FarmRate> rates, BedId bed, Optional<Double> cover) {
        this.pieces = pieces;
        this.rates = rates;
        this.bed = bed;
        this.cover = cover;
        this.state = pieces.farm.bed(bed).on(pieces.on);
        this.squareMetres = pieces.areas.squareMetres(bed, pieces.on);
    }

    /** The entry that left the bed empty last; empty where nothing is known to have stood in it. */
    static Optional<Entry> emptied(Farm farm, BedId bed, LocalDate on) {
        List<Step<BedState>> steps = farm.bed(bed).steps();
        for (int at = steps.size() - 1; at >= 0; at--) {
            Step<BedState> step = steps.get(at);
            boolean empties =
                    !step.before().crops().isEmpty() && step.after().crops().isEmpty();
            if (empties && !step.entry().head().doneOn().isAfter(on)) {
                return Optional.of(step.entry());
            }
        }
        return Optional.empty();
    }

    BedBreakdown read() {
        Optional<LocalDate> since =
                emptied(pieces.farm, bed, pieces.on).map(entry -> entry.head().doneOn());
        List<Return> all = pieces.of(bed);
        all.forEach(piece -> take(piece, since));
        if (all.isEmpty()) {
            missing.add(
                    since.isEmpty()
                            ? "what lies on it: no crop that ended here is on record"
                            : "what is left since " + since.get() + ": residue so old is not reckoned; look");
        }
        if (squareMetres <= 0) {
            missing.add("the area of the bed");
        }
        if (!state.mulches().isEmpty()) {
            remarks.add("a mulch lies on it: it is not reckoned");
        }
        if (isSpreadUpon(since)) {
            remarks.add("compost, manure or another material was spread on it: how that goes is not reckoned");
        }
        Optional<Readiness> readiness =
                missing.isEmpty() && !going.isEmpty() ? since.map(this::readiness) : Optional.empty();
        int at = pieces.climate().index(pieces.on);
        List<ReadyDate> dates = new ArrayList<>();
        readiness.ifPresent(known -> dates(known, dates));
        aboutWorkedIn(readiness.isPresent(), at);
        return new BedBreakdown(
                bed,
                pieces.on,
                squareMetres,
                after(since),
                since,
                Optional.ofNullable(state.tarp()).map(BedState.Laid::since),
                lies(since),
                going.stream().map(this::wentIn).toList(),
                readiness.map(known -> sum(each -> each.mass.times(each.shareLeft(at)))
                        .by("what went in x share left by decomposition days")),
                readiness.flatMap(known -> share(at)),
                readiness.map(known -> sum(each -> each.mass.times(each.shareOnTop(at)))),
                readiness.map(known -> known.cover(at)),
                dates,
                practice(since),
                parameters(),
                since.map(day -> pieces.weather.over(day, pieces.on)),
                missing,
                remarks,
                entries());
    }

    private boolean isSpreadUpon(Optional<LocalDate> since) {
        return pieces.farm.entries(bed).stream()
                .filter(entry -> entry.fact() instanceof Fertility.Spread)
                .map(entry -> entry.head().doneOn())
                .anyMatch(day ->
                        !day.isAfter(pieces.on) && since.filter(day::isBefore).isEmpty());
    }

    private boolean isOld(Return piece, Optional<LocalDate> since) {
        return since.isPresent() && piece.day().isBefore(since.get());
    }

    private void take(Return piece, Optional<LocalDate> since) {
        boolean old = isOld(piece, since);
        Optional<Going> on = pieces.going(piece, bed, rates);
        if (on.isEmpty()) {
            say(old, piece, unknown(piece));
            return;
        }
        double left = on.get().left(pieces.climate().index(pieces.on), Assumptions.BEST);
        if (Double.isNaN(left)) {
            LocalDate missed =
                    pieces.weather.over(piece.day(), pieces.on).firstMissing().orElse(piece.day());
            say(old, piece, "no weather is known for " + missed + "; " + WEATHER_WAY_OUT);
        } else if (left >= Constants.get("gone").value() || !old) {
            going.add(on.get());
            if (piece.evidence() == Evidence.TYPICAL) {
                remarks.add(piece.what() + ": what went in is a guess from a typical yield");
            }
        }
    }

    private static String unknown(Return piece) {
        return ResidueGroup.ofCrop(piece.what()).isEmpty()
                ? "how fast it goes: the tables put it in no group of residue"
                : "how much went in: "
                        + (piece.missing().isEmpty() ? "not known" : String.join("; ", piece.missing()))
                        + "; weigh quadrats (bedledger did quadrats)";
    }

    private String wentIn(Going each) {
        return each.piece.what() + ": " + pieces.unit.words(each.mass) + " dry, "
                + each.piece.evidence().words()
                + (each.piece.isSharedByArea() ? ", shared by area" : "");
    }

    private void say(boolean old, Return piece, String why) {
        if (old) {
            remarks.add("what may be left of the " + piece.what() + " that ended " + piece.day() + " is not reckoned: "
                    + why);
        } else {
            missing.add(piece.what() + ": " + why);
        }
    }

    private Readiness readiness(LocalDate since) {
        int start = pieces.climate().index(since);
        int last = pieces.farm.bed(bed).steps().stream()
                .filter(Step::fits)
                .map(Step::entry)
                .filter(entry -> Work.of(entry.fact()).isPresent())
                .map(entry -> entry.head().doneOn())
                .filter(day -> !day.isAfter(pieces.on))
                .mapToInt(pieces.climate()::index)
                .max()
                .orElse(start);
        return new Readiness(going, squareMetres, pieces.days(bed), start, Math.max(start, last));
    }

    private void dates(Readiness readiness, List<ReadyDate> dates) {
        for (Use use : Use.values()) {
            Optional<ReadyDate> date = readiness.date(use, cover.orElseGet(use::cover), pieces.weather);
            date.ifPresent(dates::add);
            if (date.isEmpty()) {
                missing.add("the date for " + use.words() + ": no weather stands in for the days to come; "
                        + WEATHER_WAY_OUT);
            }
        }
    }

    private Estimate sum(Function<Going, Estimate> part) {
        return going.stream().map(part).reduce(Estimate::plus).orElseThrow();
    }

    private Optional<Estimate> share(int at) {
        Estimate in = sum(each -> each.mass);
        return in.best() <= 0
                ? Optional.empty()
                : Optional.of(sum(each -> each.mass.times(each.shareLeft(at))).ratioTo(in, ""));
    }

    private List<String> after(Optional<LocalDate> since) {
        return pieces.of(bed).stream()
                .filter(piece -> !isOld(piece, since))
                .map(Return::what)
                .distinct()
                .toList();
    }

    private String lies(Optional<LocalDate> since) {
        List<Entry> works = pieces.farm.bed(bed).steps().stream()
                .filter(Step::fits)
                .map(Step::entry)
                .filter(entry -> Work.of(entry.fact()).isPresent())
                .filter(entry -> !entry.head().doneOn().isAfter(pieces.on))
                .filter(entry -> since.isEmpty() || !entry.head().doneOn().isBefore(since.get()))
                .toList();
        return works.isEmpty()
                ? "standing; nothing done to it since is on record"
                : works.stream()
                        .map(entry -> entry.kind().word() + " " + entry.head().doneOn() + " (#" + entry.number() + ")")
                        .collect(Collectors.joining(", "));
    }

    private void aboutWorkedIn(boolean known, int at) {
        if (!known) {
            return;
        }
        double buried = sum(each -> each.mass.times(each.shareLeft(at))).best()
                - sum(each -> each.mass.times(each.shareOnTop(at))).best();
        if (buried > 0.005 * squareMetres) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "about %.1f %s of it is worked in: it covers nothing, but a seeder meets it",
                    buried / pieces.unit.kilograms(),
                    pieces.unit.name()));
        }
    }

    private Optional<Practice> practice(Optional<LocalDate> since) {
        if (state.tarp() == null) {
            return Optional.empty();
        }
        LocalDate laid = state.tarp().since();
        SoilWarmth soil = new SoilWarmth(pieces.weather);
        double sum = 0;
        int counted = Constants.count("season counted over");
        for (int day = 0; day < counted; day++) {
            var warmth = soil.on(laid.plusDays(day));
            if (warmth.isEmpty()) {
                return Optional.empty();
            }
            sum += warmth.getAsDouble();
        }
        double mean = sum / counted;
        return after(since).stream()
                .flatMap(crop -> ResidueGroup.practiceOfCrop(crop).stream())
                .findFirst()
                .or(() -> Optional.of("clean bed"))
                .flatMap(after -> Practice.of(after, mean, laid));
    }

    private List<Parameter> parameters() {
        Map<String, Parameter> all = new LinkedHashMap<>();
        going.forEach(each -> {
            each.parameters().forEach(one -> all.put(one.name(), one));
            all.put(each.group.coverFactor().name(), each.group.coverFactor());
        });
        return List.copyOf(all.values());
    }

    private SortedSet<Long> entries() {
        TreeSet<Long> entries = new TreeSet<>();
        going.forEach(each -> entries.addAll(each.piece.entries()));
        return entries;
    }
}

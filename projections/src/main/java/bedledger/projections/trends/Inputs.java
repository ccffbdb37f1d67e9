package bedledger.projections.trends;

import bedledger.language.BedId;
import bedledger.language.Farm;
import bedledger.language.FieldId;
import bedledger.projections.history.BedAreas;
import bedledger.projections.returned.Evidence;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;

/** What went back, by bed, field and season, and up to the end of a season. */
public final class Inputs {
    private final Farm farm;
    private final BedAreas areas;
    private final Options options;
    private final List<BedId> beds;
    private final List<Gain> gains;

    Inputs(Farm farm, Returned returned, List<Season> seasons, List<BedId> beds, Options options) {
        this.farm = farm;
        this.areas = new BedAreas(farm);
        this.options = options;
        this.beds = beds;
        this.gains = gains(returned.pieces(), seasons, beds);
    }

    private static List<Gain> gains(List<Return> pieces, List<Season> seasons, Collection<BedId> beds) {
        List<Gain> gains = new ArrayList<>();
        for (Return piece : pieces) {
            seasons.stream()
                    .filter(season -> season.holds(piece.day()))
                    .forEach(season -> piece.beds().stream()
                            .filter(share -> beds.contains(share.bed()))
                            .forEach(share -> gains.add(
                                    new Gain(share.bed(), season, piece, piece.on(share.bed()), share.byArea()))));
        }
        return List.copyOf(gains);
    }

    /** One bed in one season. */
    public Input of(BedId bed, Season season) {
        return input(
                bed + ", " + season.name(),
                areas.squareMetres(bed, season.to()),
                gain -> gain.bed().equals(bed) && gain.season().equals(season));
    }

    /** All beds in one season. */
    public Input of(Season season) {
        return input(
                season.name(), area(beds, season.to()), gain -> gain.season().equals(season));
    }

    /** One bed in all seasons, over its area on a day. */
    public Input of(BedId bed, LocalDate on) {
        return input(
                bed.toString(), areas.squareMetres(bed, on), gain -> gain.bed().equals(bed));
    }

    /** One bed from the first season to the end of this one. */
    public Input upTo(BedId bed, Season season) {
        return input(
                bed + ", up to " + season.name(),
                areas.squareMetres(bed, season.to()),
                gain -> gain.bed().equals(bed) && gain.season().compareTo(season) <= 0);
    }

    /** The beds of one field from the first season to the end of this one. */
    public Input upTo(FieldId field, Season season) {
        List<BedId> there = bedsOf(field, season.to());
        return input(
                field + ", up to " + season.name(),
                area(there, season.to()),
                gain -> there.contains(gain.bed()) && gain.season().compareTo(season) <= 0);
    }

    /** The fields that hold a bed on a day, in the order of their beds. */
    public List<FieldId> fields(LocalDate day) {
        List<FieldId> fields = new ArrayList<>();
        for (BedId bed : beds) {
            FieldId field = farm.bed(bed).on(day).field();
            if (field != null && !fields.contains(field)) {
                fields.add(field);
            }
        }
        return List.copyOf(fields);
    }

    public List<BedId> bedsOf(FieldId field, LocalDate day) {
        return beds.stream()
                .filter(bed -> field.equals(farm.bed(bed).on(day).field()))
                .toList();
    }

    private double area(Collection<BedId> some, LocalDate day) {
        return some.stream().mapToDouble(bed -> areas.squareMetres(bed, day)).sum();
    }

    private Input input(String of, double squareMetres, Predicate<Gain> which) {
        List<Gain> all = gains.stream().filter(which).toList();
        List<Gain> counted = all.stream()
                .filter(gain -> options.countTypical() || gain.piece().evidence() != Evidence.TYPICAL)
                .toList();
        return new Input(of, squareMetres, counted, all.size() - counted.size());
    }
}

package bedledger.projections.nitrogen;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Return;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The nitrogen of one returned piece on one bed: in it, set free, still to come. All in kg; below 0 is locked up.
 *
 * @param nitrogen in what went back to this bed
 * @param workedIn when it was worked into the soil, as far as it was
 * @param normalisedDays at 15 °C and field capacity, by the day asked about
 * @param freed by the day asked about; empty without weather
 * @param inTheEnd when everything has turned over, decades on
 * @param otherWay what another published rule gives to the next crop
 * @param highNitrogenInAutumn worked in rich in autumn with nothing sown soon after
 * @param missing what could not be worked out, and for want of what
 * @param words what has to be said beside the figures
 */
public record Release(
        BedId bed,
        double squareMetres,
        Return piece,
        Optional<Estimate> nitrogen,
        Optional<LocalDate> workedIn,
        Optional<Estimate> normalisedDays,
        Optional<Estimate> freed,
        Optional<Estimate> inTheEnd,
        Optional<OtherWay> otherWay,
        Optional<Following> following,
        Optional<Uncaught> uncaught,
        boolean highNitrogenInAutumn,
        List<String> missing,
        List<String> words) {
    public Release {
        missing = List.copyOf(missing);
        words = List.copyOf(words);
    }

    /**
     * What both published ways say of the nitrogen to the next crop, from the lowest end to the highest; empty where not both
     * are known.
     */
    public Optional<Band> both() {
        Optional<Estimate> module = following
                .filter(Following::ended)
                .flatMap(next -> next.before().flatMap(one -> next.during().map(one::plus)))
                .or(() -> inTheEnd);
        return module.flatMap(one -> otherWay.map(other -> Band.of(one, other.kilograms())));
    }

    /** The lowest and the highest of two answers, kg N. */
    public record Band(double low, double high) {
        static Band of(Estimate one, Estimate two) {
            return new Band(
                    Stream.of(one, two).mapToDouble(Estimate::low).min().orElseThrow(),
                    Stream.of(one, two).mapToDouble(Estimate::high).max().orElseThrow());
        }
    }
}

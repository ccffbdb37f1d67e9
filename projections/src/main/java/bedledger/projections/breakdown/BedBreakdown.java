package bedledger.projections.breakdown;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.weather.Coverage;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * What is left on one bed on a day, and when it is ready.
 *
 * @param after the crops whose residue it is
 * @param since the day the bed was left empty; empty where the book does not say what stood there
 * @param tarpedSince the day the tarp was laid that lies there now
 * @param lies standing, on the ground or worked in, in words
 * @param wentIn each piece, how much and on what evidence, in words
 * @param left dry mass still there, worked in or not, kg; empty where something is missing
 * @param share of what went in, 0 to 1
 * @param onTop dry mass standing or on the ground, kg
 * @param cover share of the bed that is covered
 * @param ready dates by use; a use whose date cannot be worked out is left out
 * @param practice what common practice says of the tarp that lies there
 * @param parameters every figure of the tables that it rests on
 * @param coverage the weather from the end of the crop up to the day asked about
 * @param missing what could not be worked out, for want of what, and what to do
 * @param remarks what has to be said beside the figures
 * @param entries behind it
 */
public record BedBreakdown(
        BedId bed,
        LocalDate on,
        double squareMetres,
        List<String> after,
        Optional<LocalDate> since,
        Optional<LocalDate> tarpedSince,
        String lies,
        List<String> wentIn,
        Optional<Estimate> left,
        Optional<Estimate> share,
        Optional<Estimate> onTop,
        Optional<Estimate> cover,
        List<ReadyDate> ready,
        Optional<Practice> practice,
        List<Parameter> parameters,
        Optional<Coverage> coverage,
        List<String> missing,
        List<String> remarks,
        SortedSet<Long> entries) {
    public BedBreakdown {
        after = List.copyOf(after);
        wentIn = List.copyOf(wentIn);
        ready = List.copyOf(ready);
        parameters = List.copyOf(parameters);
        missing = List.copyOf(missing);
        remarks = List.copyOf(remarks);
    }

    public Optional<ReadyDate> ready(Use use) {
        return ready.stream().filter(each -> each.use() == use).findFirst();
    }

    public boolean isComplete() {
        return missing.isEmpty();
    }
}

package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.SampleMean;
import bedledger.projections.estimate.SampleWarning;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What quadrats cut after the residue was shredded say is still there, beside what had gone in.
 *
 * @param crop the crop it came from; empty where none is known to have stood
 * @param fresh g/m²
 * @param dry kg on the bed; empty where no dry share is known
 * @param returned shoots that went in on this bed, kg dry; empty where that is not known
 * @param since the day it was shredded, or else the crop ended
 * @param overlaps whether the two intervals have a value in common
 * @param warnings what is unusual about the sample
 * @param words everything to be said, sentence by sentence
 */
public record Left(
        BedId bed,
        Entry entry,
        Optional<String> crop,
        SampleMean fresh,
        Optional<Estimate> dry,
        Optional<Estimate> returned,
        Optional<LocalDate> since,
        Optional<Boolean> overlaps,
        List<SampleWarning> warnings,
        List<String> words) {
    public Left {
        warnings = List.copyOf(warnings);
        words = List.copyOf(words);
    }
}

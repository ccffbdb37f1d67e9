package bedledger.cli.read;

import bedledger.language.BedId;
import bedledger.language.BedWork.SoilSampled;
import bedledger.language.Entry;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;

/** What the laboratory wrote of phosphorus, in its own words: methods differ too much to read a number out of it. */
public final class LaboratoryPhosphorus {
    private static final Pattern PHOSPHORUS = Pattern.compile("(?i).*(\\bP\\b|P2O5|phosph).*", Pattern.DOTALL);

    private LaboratoryPhosphorus() {}

    /** The last test of a bed by a day whose report speaks of phosphorus. */
    public static Optional<String> of(ReadBook book, BedId bed, LocalDate day) {
        return book.farm().entries(bed).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(day))
                .filter(entry -> entry.fact() instanceof SoilSampled sampled
                        && sampled.report() != null
                        && PHOSPHORUS.matcher(sampled.report()).matches())
                .reduce((earlier, later) -> later)
                .map(LaboratoryPhosphorus::words);
    }

    private static String words(Entry entry) {
        return entry.head().doneOn() + " (#" + entry.number() + "): " + ((SoilSampled) entry.fact()).report();
    }
}

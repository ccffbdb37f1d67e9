package bedledger.ledger.journal;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What opening a journal for writing had to put right.
 *
 * @param bytesSetAside bytes behind the last acknowledged line that no writer ever acknowledged; 0 in the normal case
 * @param setAsideTo where they are kept
 */
public record Recovery(long bytesSetAside, Optional<Path> setAsideTo) {

    static Recovery nothing() {
        return new Recovery(0, Optional.empty());
    }

    /** A sentence for people, empty where nothing had to be done. */
    public Optional<String> report() {
        return setAsideTo.map(path ->
                "The last write was cut short before it was acknowledged: " + bytesSetAside + " bytes were moved to "
                        + path + ". Look whether the last thing you wrote is there; if not, write it again.");
    }
}

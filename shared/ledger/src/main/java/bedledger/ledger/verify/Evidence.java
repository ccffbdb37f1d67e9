package bedledger.ledger.verify;

import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;

/**
 * What is to be compared.
 *
 * @param journal the lines
 * @param checkpoints the signed checkpoints
 * @param verifierKey the verifier key of the book, {@code name+id+key}
 * @param against a checkpoint that somebody else kept: a signed note, or several as in a checkpoint file, oldest first
 * @param rows the database's entries in the order of their numbers; read once, to its end
 */
public record Evidence(
        Source journal,
        Source checkpoints,
        String verifierKey,
        Optional<String> against,
        Optional<Iterator<? extends Row>> rows) {

    /** Journal and checkpoints alone, without a database or an older checkpoint. */
    public static Evidence of(Path journal, Path checkpoints, String verifierKey) {
        return of(Source.of(journal), Source.of(checkpoints), verifierKey);
    }

    /** The same from anything that gives their bytes. */
    public static Evidence of(Source journal, Source checkpoints, String verifierKey) {
        return new Evidence(journal, checkpoints, verifierKey, Optional.empty(), Optional.empty());
    }

    /** The same, compared with a checkpoint that somebody else kept. */
    public Evidence against(String signedNote) {
        return new Evidence(journal, checkpoints, verifierKey, Optional.of(signedNote), rows);
    }

    /** The same, compared with the entries of a database. */
    public Evidence withRows(Iterator<? extends Row> databaseRows) {
        return new Evidence(journal, checkpoints, verifierKey, against, Optional.of(databaseRows));
    }
}

package bedledger.ledger.verify;

import java.util.Iterator;
import java.util.Optional;

/** Rows that can say, once they were read to their end, what else in the database does not belong to them. */
public interface RowSource extends Iterator<Row> {

    /** What does not belong to the rows though each of them may agree, in a few words; empty where everything does. */
    Optional<String> rest();
}

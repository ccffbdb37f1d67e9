package bedledger.ledger.store;

import java.sql.SQLException;
import org.axonframework.common.jdbc.PersistenceExceptionResolver;
import org.jspecify.annotations.Nullable;

/**
 * Recognises a duplicate key by SQLState 23505, wherever in the chain of causes and next exceptions it hides.
 *
 * <p>H2 puts it into {@code getNextException()} of a batch failure, PostgreSQL throws no integrity-violation class: Axon's own
 * resolver finds neither.
 */
final class DuplicateKey implements PersistenceExceptionResolver {
    private static final String UNIQUE_VIOLATION = "23505";
    private static final int DEEPEST = 20;

    @Override
    public boolean isDuplicateKeyViolation(Exception exception) {
        return found(exception, DEEPEST);
    }

    private static boolean found(@Nullable Throwable thrown, int left) {
        if (thrown == null || left == 0) {
            return false;
        }
        if (thrown instanceof SQLException sql
                && (UNIQUE_VIOLATION.equals(sql.getSQLState()) || found(sql.getNextException(), left - 1))) {
            return true;
        }
        return found(thrown.getCause(), left - 1);
    }
}

package bedledger.ledger.store;

import bedledger.language.PersonId;
import bedledger.ledger.journal.Journal;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.axonframework.common.AxonException;
import org.axonframework.common.jdbc.ConnectionProvider;
import org.axonframework.common.transaction.Transaction;
import org.axonframework.common.transaction.TransactionManager;
import org.jspecify.annotations.Nullable;

/**
 * The transactions of a book: Axon's and ours are one and the same, and the forced journal line is the commit.
 *
 * <p>Axon opens transactions inside ours; only the outermost one commits: journal first, forced, then the database. If the database
 * then fails, the entries are in the book all the same, and {@link CommittedInJournalOnly} says so.
 */
final class SealedTransactions implements TransactionManager, ConnectionProvider {
    /** What one commit has gathered so far. */
    static final class Pending {
        final PersonId writtenBy;
        final Instant writtenAt;
        final List<byte[]> lines = new ArrayList<>();
        Head head;

        Pending(PersonId writtenBy, Instant writtenAt, Head head) {
            this.writtenBy = writtenBy;
            this.writtenAt = writtenAt;
            this.head = head;
        }
    }

    private final Database database;
    private final Journal journal;
    private final Connection unclosable;
    private Head head;
    private @Nullable Pending pending;

    SealedTransactions(Database database, Journal journal, Head head) {
        this.database = database;
        this.journal = journal;
        this.head = head;
        this.unclosable = unclosable(database.connection());
    }

    Head head() {
        return head;
    }

    Pending pending() {
        if (pending == null) {
            throw new IllegalStateException("an event was published outside a commit of the book");
        }
        return pending;
    }

    /** Runs the work as one commit: all the entries it writes, or none. */
    void commit(PersonId writtenBy, Instant writtenAt, Runnable work) {
        Pending gathered = new Pending(writtenBy, writtenAt, head);
        pending = gathered;
        try {
            work.run();
            seal(gathered);
        } catch (SQLException failed) {
            rollback(failed);
            throw new StoreFailed(failed);
        } catch (RuntimeException | Error failed) {
            rollback(failed);
            throw failed;
        } finally {
            pending = null;
        }
        follow();
    }

    private void seal(Pending gathered) throws SQLException {
        long added = gathered.lines.stream().mapToLong(line -> line.length + 1L).sum();
        Head next = new Head(gathered.head.frontier(), head.journalBytes() + added, gathered.head.lastWritten());
        database.write(next);
        journal.append(gathered.lines);
        head = next;
    }

    /** From here on the entries are in the book, whatever the database does. */
    private void follow() {
        try {
            database.connection().commit();
        } catch (SQLException failed) {
            throw new CommittedInJournalOnly(failed);
        }
    }

    private void rollback(Throwable failed) {
        try {
            database.connection().rollback();
        } catch (SQLException dead) {
            if (failed instanceof AxonException) {
                throw new StoreFailed(dead);
            }
            failed.addSuppressed(dead);
        }
    }

    @Override
    public Transaction startTransaction() {
        return new Transaction() {
            @Override
            public void commit() {
                // the outermost commit is the book's own
            }

            @Override
            public void rollback() {
                // whatever failed is thrown on, and the book's own commit rolls back
            }
        };
    }

    @Override
    public Connection getConnection() {
        return unclosable;
    }

    /** Axon closes the connection it was given after each use; ours lives as long as the book is open. */
    private static Connection unclosable(Connection connection) {
        return (Connection) Proxy.newProxyInstance(
                Connection.class.getClassLoader(), new Class<?>[] {Connection.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("close")) {
                        return null;
                    }
                    try {
                        return method.invoke(connection, arguments);
                    } catch (InvocationTargetException failed) {
                        throw failed.getCause();
                    }
                });
    }
}

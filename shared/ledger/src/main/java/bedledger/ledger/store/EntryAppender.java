package bedledger.ledger.store;

import bedledger.language.ActId;
import bedledger.language.Entry;
import bedledger.ledger.entry.Deed;
import bedledger.ledger.entry.DeedCodec;
import bedledger.ledger.entry.Line;
import bedledger.ledger.json.CanonicalJson;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.Merkle;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.List;
import org.axonframework.eventhandling.DomainEventMessage;
import org.axonframework.eventhandling.EventMessage;
import org.axonframework.eventsourcing.eventstore.jdbc.EventSchema;
import org.axonframework.eventsourcing.eventstore.jdbc.statements.AppendEventsStatementBuilder;
import org.axonframework.eventsourcing.eventstore.jdbc.statements.TimestampWriter;
import org.axonframework.serialization.Serializer;

/** Appends Axon's events as numbered, sealed entries: one row, its index rows, and its line for the journal, in one transaction. */
final class EntryAppender implements AppendEventsStatementBuilder {
    private final SealedTransactions transactions;
    private final Database database;

    EntryAppender(SealedTransactions transactions, Database database) {
        this.transactions = transactions;
        this.database = database;
    }

    @Override
    public PreparedStatement build(
            Connection connection,
            EventSchema schema,
            Class<?> dataType,
            List<? extends EventMessage<?>> events,
            Serializer serializer,
            TimestampWriter timestampWriter)
            throws SQLException {
        PreparedStatement insert = connection.prepareStatement(EntryRow.INSERT);
        for (EventMessage<?> event : events) {
            append(insert, (DomainEventMessage<?>) event);
        }
        return insert;
    }

    private void append(PreparedStatement insert, DomainEventMessage<?> event) throws SQLException {
        SealedTransactions.Pending pending = transactions.pending();
        Deed deed = (Deed) event.getPayload();
        Entry entry = new Entry(
                pending.head.size() + 1,
                new ActId(event.getAggregateIdentifier()),
                event.getSequenceNumber(),
                pending.writtenAt,
                pending.writtenBy,
                deed.head(),
                deed.fact());
        byte[] line = Line.write(entry);
        Hash leaf = Merkle.leaf(line);
        EntryRow.fill(insert, entry, entry.kind().revision(), CanonicalJson.write(DeedCodec.write(deed)), leaf);
        insert.addBatch();
        EntryRow.index(database.connection(), entry);
        pending.lines.add(line);
        pending.head = new Head(
                pending.head.frontier().append(leaf), pending.head.journalBytes(), Line.written(entry.writtenAt()));
    }
}

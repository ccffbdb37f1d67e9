package bedledger.ledger.store;

import org.axonframework.eventsourcing.eventstore.EventStorageEngine;
import org.axonframework.eventsourcing.eventstore.jdbc.EventSchema;
import org.axonframework.eventsourcing.eventstore.jdbc.JdbcEventStorageEngine;
import org.axonframework.serialization.Serializer;

/** Axon's JDBC event storage over our own table. */
final class AxonStorage {
    private static final int BATCH = 1000;

    static EventStorageEngine over(SealedTransactions transactions, Database database, Serializer serializer) {
        return JdbcEventStorageEngine.builder()
                .snapshotSerializer(serializer)
                .eventSerializer(serializer)
                .persistenceExceptionResolver(new DuplicateKey())
                .connectionProvider(transactions)
                .transactionManager(transactions)
                .dataType(byte[].class)
                .batchSize(BATCH)
                .lowestGlobalSequence(1)
                .appendEvents(new EntryAppender(transactions, database))
                .schema(EventSchema.builder()
                        .eventTable("entry")
                        .globalIndexColumn("number")
                        .timestampColumn("written_at")
                        .eventIdentifierColumn("event_id")
                        .aggregateIdentifierColumn("act")
                        .sequenceNumberColumn("sequence")
                        .typeColumn("type")
                        .payloadTypeColumn("name")
                        .payloadRevisionColumn("revision")
                        .payloadColumn("payload")
                        .metaDataColumn("meta")
                        .build())
                .build();
    }

    private AxonStorage() {}
}

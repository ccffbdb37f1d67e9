package bedledger.ledger.store;

import bedledger.ledger.entry.Deed;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.axonframework.config.Configuration;
import org.axonframework.config.DefaultConfigurer;
import org.axonframework.eventhandling.GenericDomainEventMessage;
import org.axonframework.messaging.unitofwork.DefaultUnitOfWork;

/** A process that writes one entry through a whole Axon configuration, set up as the program sets it up, and stays for two seconds. */
public final class AxonWriter {
    private static final long LONGER_THAN_THE_UPDATE_CHECKER_WAITS = 2000;

    public static void main(String[] arguments) throws Exception {
        try (Ledger ledger = Ledger.open(new BookFolder(Path.of(arguments[0])))) {
            Configuration axon = DefaultConfigurer.defaultConfiguration(false)
                    .configureSerializer(c -> ledger.serializer())
                    .configureEventSerializer(c -> ledger.serializer())
                    .configureMessageSerializer(c -> ledger.serializer())
                    .configureTransactionManager(c -> ledger.transactionManager())
                    .configureCorrelationDataProviders(c -> List.of())
                    .configureEmbeddedEventStore(c -> ledger.storageEngine())
                    .start();
            String act = Pen.id(900).toString();
            GenericDomainEventMessage<Deed> event = new GenericDomainEventMessage<>(EntryRow.TYPE, act, 0, Pen.deed(1));
            ledger.commit(
                    Pen.WRITER,
                    Instant.parse("2026-03-02T19:00:00Z"),
                    () -> DefaultUnitOfWork.startAndGet(event)
                            .execute(() -> axon.eventStore().publish(event)));
            Thread.sleep(LONGER_THAN_THE_UPDATE_CHECKER_WAITS);
            axon.shutdown();
            try (FileOutputStream out = new FileOutputStream(FileDescriptor.out)) {
                String said = "entry " + ledger.size() + " in " + System.getProperty("user.home") + "\n";
                out.write(said.getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    private AxonWriter() {}
}

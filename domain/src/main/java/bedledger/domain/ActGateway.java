package bedledger.domain;

import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Refused;
import bedledger.ledger.entry.Deed;
import bedledger.ledger.store.Ledger;
import java.util.List;
import org.axonframework.commandhandling.CommandExecutionException;
import org.axonframework.config.Configuration;
import org.axonframework.config.DefaultConfigurer;

/** Sends acts to their aggregates through Axon, inside the one commit of the book. */
final class ActGateway implements AutoCloseable {
    private final Configuration axon;

    ActGateway(Ledger ledger) {
        // Without module discovery: nothing on the class path may add itself, the update checker least of all.
        axon = DefaultConfigurer.defaultConfiguration(false)
                .configureSerializer(c -> ledger.serializer())
                .configureEventSerializer(c -> ledger.serializer())
                .configureMessageSerializer(c -> ledger.serializer())
                .configureTransactionManager(c -> ledger.transactionManager())
                .configureCorrelationDataProviders(c -> List.of())
                .configureEmbeddedEventStore(c -> ledger.storageEngine())
                .configureAggregate(RecordedAct.class)
                .start();
    }

    void send(Entry entry) {
        String act = entry.act().toString();
        Deed deed = new Deed(entry.head(), entry.fact());
        Object command = entry.head().corrects() == null
                ? new RecordAct(act, deed)
                : entry.fact() instanceof BookKeeping.Struck ? new StrikeAct(act, deed) : new CorrectAct(act, deed);
        try {
            axon.commandGateway().sendAndWait(command);
        } catch (CommandExecutionException failed) {
            if (failed.getCause() instanceof Refused refused) {
                throw refused;
            }
            throw failed;
        }
    }

    @Override
    public void close() {
        axon.shutdown();
    }
}

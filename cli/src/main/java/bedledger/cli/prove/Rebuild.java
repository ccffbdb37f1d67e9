package bedledger.cli.prove;

import bedledger.cli.BookPlace;
import bedledger.cli.Exit;
import bedledger.cli.Surroundings;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.Ledger;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code bedledger rebuild}: makes the database anew from the journal. */
@Command(
        name = "bedledger rebuild",
        sortOptions = false,
        description = "Set the database aside and make it anew from the journal, which holds everything.")
public final class Rebuild implements Callable<Integer> {
    private final Surroundings around;

    @Option(names = "--book", paramLabel = "FOLDER", description = "the book (else the one in this folder or above it)")
    @Nullable
    Path book;

    public Rebuild(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        BookFolder folder = BookPlace.find(around, book);
        Ledger.rebuild(folder).forEach(around.out()::println);
        around.out().println("The database was made anew from the journal. Check: bedledger verify");
        return Exit.OK;
    }
}

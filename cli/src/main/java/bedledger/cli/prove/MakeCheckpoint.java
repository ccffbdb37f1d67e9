package bedledger.cli.prove;

import bedledger.cli.BookPlace;
import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.Ledger;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code bedledger checkpoint}: the signed head of the log, to be handed to somebody else. */
@Command(
        name = "bedledger checkpoint",
        sortOptions = false,
        description = "Sign the log as it stands, and print the checkpoint to hand to your certifier.",
        footer = {
            "",
            "Example: bedledger checkpoint --out checkpoint-spring.txt",
            "Example, for a certifier: bedledger checkpoint --cosign from-the-farm.txt --key-file our.key"
        })
public final class MakeCheckpoint implements Callable<Integer> {
    private final Surroundings around;

    @Option(names = "--book", paramLabel = "FOLDER", description = "the book (else the one in this folder or above it)")
    @Nullable
    Path book;

    @Option(names = "--out", paramLabel = "FILE", description = "also write it to this new file")
    @Nullable
    Path out;

    @Option(
            names = "--cosign",
            paramLabel = "FILE",
            description = "for a certifier: countersign this farm's checkpoint, with the time; needs --key-file")
    @Nullable
    Path cosign;

    @Option(names = "--key-file", paramLabel = "FILE", description = "the certifier's own key file, made by --new-key")
    @Nullable
    Path keyFile;

    @Option(
            names = "--new-key",
            paramLabel = "NAME",
            description = "for a certifier: make a key to countersign with, and print the half to hand out")
    @Nullable
    String newKey;

    public MakeCheckpoint(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Countersigning certifier = new Countersigning(around);
        if (newKey != null) {
            return certifier.makeKey(newKey);
        }
        if (cosign != null || keyFile != null) {
            SignedNote countersigned = certifier.cosign(cosign, keyFile);
            around.out().print(countersigned);
            if (out != null) {
                write(around.folder().resolve(out), countersigned);
            }
            return Exit.OK;
        }
        BookFolder folder = BookPlace.find(around, book);
        SignedNote note = sealed(around, folder);
        around.out().print(note);
        if (out != null) {
            write(around.folder().resolve(out), note);
        }
        around.err()
                .println("Hand this to somebody else, your certifier first of all: what it covers can then not be"
                        + " changed unseen. They check it with: bedledger verify --against FILE");
        return Exit.OK;
    }

    /** The log as it stands, signed now if the key is here; else the last checkpoint that there is. */
    public static SignedNote sealed(Surroundings around, BookFolder folder) {
        return BookPlace.key(around, folder)
                .map(key -> {
                    try (Ledger ledger = Ledger.open(folder)) {
                        return ledger.seal(key);
                    }
                })
                .or(() -> Checkpoints.in(folder.checkpoints()).last())
                .orElseThrow(() ->
                        new Failure(Exit.REFUSED, "There is no checkpoint, and the key to sign one is not here."));
    }

    private static void write(Path file, SignedNote note) {
        try {
            Files.write(file, note.toBytes(), StandardOpenOption.CREATE_NEW);
        } catch (IOException failed) {
            throw new Failure(
                    Exit.CANNOT_CREATE,
                    "'" + file + "' could not be written: " + failed.getMessage()
                            + ". Choose a name that is not taken.");
        }
    }
}

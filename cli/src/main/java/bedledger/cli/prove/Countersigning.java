package bedledger.cli.prove;

import bedledger.cli.BookPlace;
import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.ledger.note.CosignerKey;
import bedledger.ledger.note.KeyFile;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.note.SigningKey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** A certifier's part: a key of their own, and their signature with the time below a farm's checkpoint (C2SP tlog-cosignature). */
final class Countersigning {
    private final Surroundings around;

    Countersigning(Surroundings around) {
        this.around = around;
    }

    /** Makes a key file in this person's settings and prints the half to hand out. */
    int makeKey(String name) {
        SigningKey key = SigningKey.generate(name);
        Path file = BookPlace.keyFile(around, key.verifier());
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
        } catch (IOException failed) {
            throw new Failure(
                    Exit.CANNOT_CREATE,
                    "The key could not be kept in '" + file + "': " + failed.getMessage()
                            + ". Check that the folder is yours to write in, or set XDG_CONFIG_HOME.");
        }
        KeyFile.save(key, file);
        around.out().println(new CosignerKey(key.verifier()));
        around.err()
                .println("This line is for everybody who is to check your countersignature. The key is " + file
                        + ": keep a copy in a safe place, and give it to nobody.");
        return Exit.OK;
    }

    /** The checkpoint in the file with the certifier's signature below the farm's. */
    SignedNote cosign(@Nullable Path checkpoint, @Nullable Path keyFile) {
        if (checkpoint == null || keyFile == null) {
            throw new Failure(
                    Exit.USAGE,
                    "--cosign FILE and --key-file FILE belong together. A key is made by:"
                            + " bedledger checkpoint --new-key NAME");
        }
        Path file = around.folder().resolve(checkpoint);
        Path secret = around.folder().resolve(keyFile);
        if (!Files.isRegularFile(file) || !Files.isRegularFile(secret)) {
            Path missing = Files.isRegularFile(file) ? keyFile : checkpoint;
            throw new Failure(Exit.NO_INPUT, "There is no file '" + missing + "'. Check the path.");
        }
        KeyFile.Loaded loaded = KeyFile.load(secret);
        loaded.warning().ifPresent(around.err()::println);
        around.err()
                .println("You say by it: at this time this was the newest state of that record that I saw, and it went"
                        + " on from the one before. Look first: bedledger inspect PACKET --since YOUR-LAST-ONE");
        try {
            SignedNote note = SignedNote.parse(Files.readAllBytes(file));
            return CosignerKey.cosign(note, loaded.key(), around.clock().instant());
        } catch (IOException failed) {
            throw bedledger.cli.Bedledger.unreadable(file, failed);
        }
    }
}

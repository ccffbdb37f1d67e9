package bedledger.cli.packet;

import bedledger.cli.BookPlace;
import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.prove.MakeCheckpoint;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.note.ConsistencyProof;
import bedledger.ledger.note.EntryProof;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.tree.Proofs;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code bedledger packet}: the sealed file for the certifier, or the proof of a single entry. */
@Command(
        name = "bedledger packet",
        sortOptions = false,
        description = "Write the packet for your certifier: the record, its seal, the documents, the findings, the"
                + " tables, the report, and a page that says how to check all of it by hand.",
        footer = {
            "",
            "Example: bedledger packet --since checkpoint-spring.txt",
            "Example: bedledger packet --entry 31 --out carrots.tlog-proof"
        })
public final class PacketCommand implements Callable<Integer> {
    private final Surroundings around;

    @Option(names = "--book", paramLabel = "FOLDER", description = "the book (else the one in this folder or above it)")
    @Nullable
    Path book;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "where to write it (packets/ in the book if left out); what is there is left alone, and the"
                    + " new one gets a number")
    @Nullable
    Path out;

    @Option(
            names = "--since",
            paramLabel = "CHECKPOINT",
            description = "with the proof that the record goes on from this earlier checkpoint, unchanged")
    @Nullable
    Path since;

    @Option(names = "--entry", paramLabel = "N", description = "instead of the packet, the proof of this one entry")
    @Nullable
    Long entry;

    public PacketCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        BookFolder folder = BookPlace.find(around, book);
        SignedNote note = MakeCheckpoint.sealed(around, folder);
        PacketWriter packet = new PacketWriter(folder, note);
        String stem = folder.verifierKey().name().replace('/', '_');
        if (entry != null) {
            EntryProof proof = proof(packet, note, entry);
            ByteBuffer text = ByteBuffer.wrap(proof.text().getBytes(StandardCharsets.UTF_8));
            Path file = NewFile.write(wanted(folder, stem + "-entry-" + entry + ".tlog-proof"), to -> to.write(text));
            around.out().println(file);
            return Exit.OK;
        }
        Optional<ConsistencyProof> consistency = Optional.ofNullable(since).map(file -> packet.since(older(file)));
        Path file = NewFile.write(
                wanted(folder, stem + "-" + packet.pages().day() + ".zip"), to -> packet.write(to, consistency));
        say(file, packet, note);
        return Exit.OK;
    }

    private Path wanted(BookFolder folder, String name) {
        return out == null
                ? folder.root().resolve("packets").resolve(name)
                : around.folder().resolve(out);
    }

    private SignedNote older(Path file) {
        Path path = around.folder().resolve(file);
        if (!Files.isRegularFile(path)) {
            throw new Failure(Exit.NO_INPUT, "There is no file '" + file + "'. Give the checkpoint that was kept.");
        }
        return Checkpoints.in(path)
                .last()
                .orElseThrow(() -> new Failure(
                        Exit.REFUSED,
                        "'" + file + "' holds no signed checkpoint; nothing was written. Give the checkpoint that was"
                                + " kept."));
    }

    private static EntryProof proof(PacketWriter packet, SignedNote note, long number) {
        long size = Checkpoint.parse(note.text()).size();
        if (number < 1 || number > size) {
            throw new Failure(
                    Exit.REFUSED,
                    "Entry " + number + " lies under no checkpoint: " + size + " entries do. Nothing was written.");
        }
        return new EntryProof(
                packet.line(number),
                number - 1,
                Proofs.inclusion(number - 1, size, packet.recorded().source()),
                note);
    }

    private void say(Path file, PacketWriter packet, SignedNote note) {
        long sealed = Checkpoint.parse(note.text()).size();
        around.out().println(file);
        packet.absent()
                .forEach(document ->
                        around.err().println("Not in it, for the book's folder has not got it: document " + document));
        if (packet.recorded().size() > sealed) {
            around.err()
                    .println((packet.recorded().size() - sealed)
                            + " entries at the end lie under no checkpoint: the book's key is not here.");
        }
        around.err()
                .println("Hand it over whole. It is checked with: bedledger inspect " + file.getFileName()
                        + "  (or by hand, by the README.txt in it)");
    }
}

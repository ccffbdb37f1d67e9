package bedledger.cli.packet;

import bedledger.cli.Bedledger;
import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.packet.InspectView.Inspected;
import bedledger.cli.read.Output;
import bedledger.ledger.note.CosignerKey;
import bedledger.ledger.note.VerifierKey;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger inspect}: whether a packet agrees with itself, with its signature, and with a checkpoint that was kept. */
@Command(
        name = "bedledger inspect",
        sortOptions = false,
        description = "Check a packet, the proof of an entry, or a folder of packets. Nothing in it is believed but the"
                + " lines and the signature; everything else is worked out again and compared.",
        footer = {
            "",
            "Example: bedledger inspect packet.zip --since checkpoint-kept-in-spring.txt",
            "Example: bedledger inspect packet.zip --into plum-tree",
            "Example: bedledger inspect folder-of-packets"
        })
public final class InspectCommand implements Callable<Integer> {
    private static final int LARGEST_CHECKPOINTS = 16 * 1024 * 1024;

    private final Surroundings around;

    @Parameters(
            paramLabel = "PACKET|FOLDER",
            description = "the packet, a .tlog-proof, an unpacked packet, or a folder of packets")
    Path target = Path.of("");

    @Option(
            names = "--since",
            paramLabel = "FILE",
            description = "a checkpoint that you kept from earlier; may be given more than once")
    List<Path> since = new ArrayList<>();

    @Option(
            names = "--key",
            paramLabel = "KEY",
            description =
                    "the farm's verifier key as it was handed to you, or a certifier's; may be given more than once")
    List<String> keys = new ArrayList<>();

    @Option(
            names = "--seal-only",
            description = "only lines, signature, checkpoints and documents, in little memory: for very large packets")
    boolean sealOnly;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "where all agrees, also lay the record into a new folder, to be asked as a book:"
                    + " trace, balance, gaps, mock-audit …")
    @Nullable
    Path into;

    @Option(names = "--json", description = "as JSON, by the schema of the same name")
    boolean json;

    @Option(names = "--csv", description = "as CSV, one line a packet")
    boolean csv;

    public InspectCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Path path = around.folder().resolve(target);
        if (json && csv) {
            throw new Failure(Exit.USAGE, "Give --json or --csv, not both.");
        }
        if (!Files.exists(path)) {
            throw new Failure(Exit.NO_INPUT, "There is no file or folder '" + target + "'. Check the path.");
        }
        boolean many = Files.isDirectory(path) && !PacketFile.isUnpacked(path);
        if (into != null && many) {
            throw new Failure(Exit.USAGE, "--into takes one packet, not a folder of them.");
        }
        Given given = given(many);
        List<Inspected> packets = many
                ? new PacketFolder(path, given).inspect()
                : List.of(PacketFile.inspect(target.toString(), path, given));
        if (packets.isEmpty()) {
            throw new Failure(
                    Exit.NO_INPUT, "There is no packet in '" + target + "': no file that ends in .zip or .tlog-proof.");
        }
        InspectView view = new InspectView(packets.stream().allMatch(Inspected::agrees), packets);
        if (json) {
            around.out().println(Output.json(view));
        } else if (csv) {
            around.out().print(Output.csv(InspectText.table(view)));
        } else {
            new InspectText(around.out()).print(view, many);
        }
        if (into != null) {
            copy(path, around.folder().resolve(into), packets.get(0));
        }
        return exit(view);
    }

    private void copy(Path packet, Path folder, Inspected found) {
        if (!found.kind().equals("packet")) {
            throw new Failure(
                    Exit.USAGE,
                    "--into takes a packet; the proof of one entry holds no record that could be laid out.");
        }
        if (!found.agrees()) {
            around.err().println("Nothing was laid into '" + into + "': what does not agree is not to be asked.");
            return;
        }
        AskableCopy.make(packet, folder);
        around.err()
                .println("The record is in '" + into
                        + "', as a book without its key; ask it: bedledger mock-audit --book " + into);
    }

    /** What does not agree weighs more than what could not be read: that is named beside it. */
    private static int exit(InspectView view) {
        if (view.agrees()) {
            return Exit.OK;
        }
        return view.packets().stream().anyMatch(one -> !one.agrees() && !InspectText.isNotRead(one))
                ? Exit.FOUND_WANTING
                : Exit.REFUSED;
    }

    private Given given(boolean many) {
        List<String> books = new ArrayList<>();
        List<CosignerKey> cosigners = new ArrayList<>();
        for (String key : keys) {
            if (CosignerKey.isOne(key)) {
                cosigners.add(CosignerKey.parse(key));
            } else {
                books.add(VerifierKey.parse(key).toString());
            }
        }
        return new Given(since.stream().map(this::kept).toList(), books, cosigners, sealOnly, many);
    }

    private String kept(Path file) {
        Path path = around.folder().resolve(file);
        try {
            if (!Files.isRegularFile(path)) {
                throw new Failure(Exit.NO_INPUT, "There is no file '" + file + "'. Give the checkpoint that you kept.");
            }
            if (Files.size(path) > LARGEST_CHECKPOINTS) {
                throw new Failure(Exit.NO_INPUT, "'" + file + "' is too large for a checkpoint.");
            }
            return new String(Files.readAllBytes(path), StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw Bedledger.unreadable(path, failed);
        }
    }
}

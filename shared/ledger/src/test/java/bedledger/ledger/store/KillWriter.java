package bedledger.ledger.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import bedledger.ledger.entry.DeedCodec;
import bedledger.ledger.json.CanonicalJson;
import bedledger.ledger.note.KeyFile;
import bedledger.ledger.note.SigningKey;
import java.io.ByteArrayOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.SplittableRandom;

/**
 * The process that is killed: writes without pause, and says what is acknowledged only once it is.
 *
 * <p>Prints {@code healed REPORT} and {@code ready} after opening; after each commit {@code entry NUMBER PAYLOAD} for each of its
 * entries, then {@code done}. Arguments: the book's folder, the key file, {@code stream} or {@code one-shot}, a seed, further H2 settings.
 */
public final class KillWriter {
    private static final int COMMITS_TO_A_CHECKPOINT = 20;
    private static final int LARGE = 40;
    private final BookFolder folder;
    private final SigningKey key;
    private final SplittableRandom random;
    private final String more;
    private final String name;
    private final FileOutputStream out;

    private KillWriter(String[] arguments, FileOutputStream out) {
        this.folder = new BookFolder(Path.of(arguments[0]));
        this.key = KeyFile.load(Path.of(arguments[1])).key();
        this.name = arguments[3];
        this.random = new SplittableRandom(Long.parseLong(name));
        this.more = arguments[4];
        this.out = out;
    }

    public static void main(String[] arguments) throws IOException {
        try (FileOutputStream out = new FileOutputStream(java.io.FileDescriptor.out)) {
            KillWriter writer = new KillWriter(arguments, out);
            if (arguments[2].equals("stream")) {
                writer.stream();
            } else {
                writer.oneShots();
            }
        }
    }

    private void stream() throws IOException {
        try (Ledger ledger = open()) {
            Pen pen = new Pen(ledger, random, name);
            for (long commit = 1; ; commit++) {
                acknowledge(pen, size());
                if (commit % COMMITS_TO_A_CHECKPOINT == 0) {
                    ledger.seal(key);
                }
            }
        }
    }

    /** As a command does: open, write, seal, close, and only then acknowledge. */
    private void oneShots() throws IOException {
        for (int run = 0; ; run++) {
            ByteArrayOutputStream said = new ByteArrayOutputStream();
            try (Ledger ledger = open()) {
                write(said, new Pen(ledger, random, name + "-" + run), 1);
                ledger.seal(key);
            }
            said.writeTo(out);
        }
    }

    private Ledger open() throws IOException {
        Ledger ledger = Ledger.open(folder, more);
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        ledger.reports().forEach(report -> said.writeBytes(("healed " + report + "\n").getBytes(UTF_8)));
        said.writeBytes("ready\n".getBytes(UTF_8));
        said.writeTo(out);
        return ledger;
    }

    private int size() {
        return switch (random.nextInt(20)) {
            case 0 -> LARGE;
            case 1, 2, 3, 4 -> 3;
            default -> 1;
        };
    }

    private void acknowledge(Pen pen, int entries) throws IOException {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        write(said, pen, entries);
        said.writeTo(out);
    }

    private static void write(ByteArrayOutputStream said, Pen pen, int entries) {
        for (Pen.Sent sent : pen.write(entries)) {
            said.writeBytes(("entry " + sent.number() + " ").getBytes(UTF_8));
            said.writeBytes(CanonicalJson.write(DeedCodec.write(sent.deed())));
            said.write('\n');
        }
        said.writeBytes("done\n".getBytes(UTF_8));
    }
}

package bedledger.ledger.store;

import bedledger.ledger.note.SigningKey;
import bedledger.ledger.verify.Evidence;
import bedledger.ledger.verify.Verdict;
import bedledger.ledger.verify.Verifier;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A book for a test to write in and to damage. */
final class PracticeBook {
    final BookFolder folder;
    final SigningKey key;

    PracticeBook(Path scratch) {
        folder = new BookFolder(scratch.resolve("greenfold"));
        key = SigningKey.generate("example.org/greenfold");
        Ledger.create(folder, key);
    }

    private PracticeBook(BookFolder folder, SigningKey key) {
        this.folder = folder;
        this.key = key;
    }

    /** A copy of the files as they lie there. */
    PracticeBook copy(Path root) throws IOException {
        PracticeBook copy = new PracticeBook(new BookFolder(root), key);
        Files.createDirectories(copy.folder.store());
        Files.copy(folder.marker(), copy.folder.marker());
        Files.copy(folder.journal(), copy.folder.journal());
        Files.copy(folder.checkpoints(), copy.folder.checkpoints());
        Files.copy(folder.databaseFile(), copy.folder.databaseFile());
        return copy;
    }

    /** Opens, writes so many entries in commits of one, seals every {@code sealEvery} and at the end, and closes. */
    PracticeBook holding(int entries, int sealEvery) {
        try (Ledger ledger = Ledger.open(folder)) {
            Pen pen = new Pen(ledger, new SplittableRandom(7), "practice");
            for (int entry = 1; entry <= entries; entry++) {
                pen.write(1);
                if (entry % sealEvery == 0) {
                    ledger.seal(key);
                }
            }
            ledger.seal(key);
        }
        return this;
    }

    PracticeBook holding(int entries) {
        return holding(entries, entries);
    }

    /** Opens the book, writes one more commit, and closes; returns what opening had to put right. */
    List<String> writeMore(int entries) {
        try (Ledger ledger = Ledger.open(folder)) {
            new Pen(ledger, new SplittableRandom(8), "more-" + ledger.size()).write(entries);
            return ledger.reports();
        }
    }

    List<String> open() {
        try (Ledger ledger = Ledger.open(folder)) {
            return ledger.reports();
        }
    }

    Evidence evidence() {
        return Evidence.of(
                folder.journal(), folder.checkpoints(), key.verifier().toString());
    }

    Verdict verify() {
        try (DatabaseRows rows = DatabaseRows.of(folder)) {
            return Verifier.verify(evidence().withRows(rows));
        }
    }

    byte[] journal() throws IOException {
        return Files.readAllBytes(folder.journal());
    }

    /** Cuts, or fills up with zeros, as a disk does that lost pages. */
    static void resize(Path file, long size) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(bytes, (int) size));
    }

    /** Everything in the folder but the locks and the database, whose file H2 touches when it only looks. */
    Map<String, String> record() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder.root())) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = folder.root().relativize(file).toString();
                if (!name.endsWith(".lock") && !name.startsWith("store")) {
                    files.put(name, Files.readString(file, StandardCharsets.ISO_8859_1));
                }
            }
        }
        return files;
    }

    /** What the rows of the database spell. */
    List<String> rows() {
        List<String> lines = new ArrayList<>();
        try (DatabaseRows rows = DatabaseRows.of(folder)) {
            rows.forEachRemaining(row -> lines.add(new String(row.lineBytes(), StandardCharsets.UTF_8)));
        }
        return lines;
    }

    long lines() throws IOException {
        try (Stream<String> lines = Files.lines(folder.journal())) {
            return lines.count();
        }
    }
}

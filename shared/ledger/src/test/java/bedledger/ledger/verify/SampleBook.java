package bedledger.ledger.verify;

import static java.nio.charset.StandardCharsets.UTF_8;

import bedledger.ledger.journal.Journal;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Merkle;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A book of a dozen entries, written by the program's own writing side; the tests then change it by hand. */
final class SampleBook {

    static final int ENTRIES = 12;
    static final Set<Integer> SEALED_AT = Set.of(4, 8, 12);
    private static final SigningKey KEY = SigningKey.generate("example.org/greenfold");

    final Path journal;
    final Path checkpoints;

    private SampleBook(Path folder) {
        journal = folder.resolve("journal");
        checkpoints = folder.resolve("checkpoints");
    }

    static SampleBook writtenTo(Path folder) {
        return writtenTo(folder, lines(), SEALED_AT);
    }

    static SampleBook writtenTo(Path folder, List<String> lines, Set<Integer> sealedAt) {
        SampleBook book = new SampleBook(folder);
        Frontier tree = Frontier.empty();
        try (Journal journal = Journal.open(book.journal)) {
            for (String line : lines) {
                journal.append(List.of(line.getBytes(UTF_8)));
                tree = tree.append(Merkle.leaf(line.getBytes(UTF_8)));
                if (sealedAt.contains((int) tree.size())) {
                    Checkpoints.in(book.checkpoints).append(signed(tree));
                }
            }
        }
        return book;
    }

    static SignedNote signed(Frontier tree) {
        return KEY.sign(new Checkpoint(KEY.verifier().name(), tree.size(), tree.root()).text());
    }

    static SignedNote signedFor(List<String> lines) {
        Frontier tree = Frontier.empty();
        for (String line : lines) {
            tree = tree.append(Merkle.leaf(line.getBytes(UTF_8)));
        }
        return signed(tree);
    }

    static String vkey() {
        return KEY.verifier().toString();
    }

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int number = 1; number <= ENTRIES; number++) {
            lines.add(line(number, "N" + number));
        }
        return lines;
    }

    static String line(int number, String bed) {
        return ("{\"act\":\"a-%d\",\"name\":\"bed.tarp-laid\",\"number\":%d,\"payload\":{\"bed\":\"%s\",\"note\":\"wet, ö\"},"
                        + "\"revision\":1,\"sequence\":0,\"writtenAt\":\"2026-03-02T17:%02d:00.000Z\",\"writtenBy\":\"kim\"}")
                .formatted(number, number, bed, 10 + number);
    }

    /** The journal holds these lines instead. */
    void holds(List<String> lines) {
        holds(
                journal,
                lines.stream()
                        .map(line -> line + "\n")
                        .collect(Collectors.joining())
                        .getBytes(UTF_8));
    }

    static void holds(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    Evidence evidence() {
        return Evidence.of(journal, checkpoints, vkey());
    }

    Verdict verify() {
        return Verifier.verify(evidence());
    }

    record StoredRow(long number, String line) implements Row {

        @Override
        public byte[] lineBytes() {
            return line.getBytes(UTF_8);
        }
    }

    static List<StoredRow> rows() {
        List<StoredRow> rows = new ArrayList<>();
        for (String line : lines()) {
            rows.add(new StoredRow(rows.size() + 1L, line));
        }
        return rows;
    }

    Verdict verifyWith(List<StoredRow> rows) {
        Iterator<StoredRow> iterator = rows.iterator();
        return Verifier.verify(evidence().withRows(iterator));
    }
}

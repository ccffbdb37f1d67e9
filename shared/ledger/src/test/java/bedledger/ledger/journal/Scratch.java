package bedledger.ledger.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Journals as the tests speak of them. */
final class Scratch {

    private Scratch() {}

    static List<byte[]> lines(String... lines) {
        return Arrays.stream(lines).map(line -> line.getBytes(UTF_8)).toList();
    }

    static List<String> read(Path journal) {
        List<String> lines = new ArrayList<>();
        Journal.read(journal, 0, (offset, line) -> lines.add(new String(line, UTF_8)));
        return lines;
    }

    static Path holding(Path folder, String content) throws IOException {
        return Files.writeString(folder.resolve("journal"), content);
    }
}

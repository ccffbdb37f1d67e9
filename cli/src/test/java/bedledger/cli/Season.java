package bedledger.cli;

import bedledger.language.Entry;
import bedledger.ledger.entry.Line;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The invented season of Hollow Lane Farm that the program carries for its demo, with a note of two lines and what follows the harvest added. */
final class Season {
    static final String END = "2025-12-31";
    private static final String NEW = "new farm --farm \"Hollow Lane Farm\" --practice --units us"
            + " --time-zone America/New_York --written 2025-02-10T18:00";
    private static final String TWO_LINES =
            "did weather --rain 1.2in --seen hail --note \"hail at noon,\nlettuce torn\""
                    + " --on 2025-06-24 --written 2025-06-24";
    private static final JsonMapper JSON = new JsonMapper();

    /** Every command of the season as typed, in the order of writing. */
    static List<String> commands() {
        List<String> lines = new ArrayList<>();
        for (String line : resource("/bedledger/cli/start/season.txt")) {
            if (line.startsWith("did harvest K5 --crop lettuce")) {
                lines.add(TWO_LINES);
            }
            if (line.startsWith("did sign-off")) {
                lines.addAll(resource("/bedledger/cli/after-harvest.txt"));
            }
            // Entry 59 of the demo: here one act more comes before it.
            lines.add(line.replace("correct 59 ", "correct 60 "));
        }
        return lines;
    }

    static List<String> resource(String name) {
        try (InputStream in = Objects.requireNonNull(Season.class.getResourceAsStream(name), name)) {
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(name, failed);
        }
    }

    /** A desk with the practice book of the farm and nothing in it yet. */
    static Desk begun(Path folder) {
        Desk desk = new Desk(folder);
        desk.run(NEW).done();
        return desk;
    }

    /** A desk with the whole season in the folder {@code farm}, each command by itself. */
    static Desk lineByLine(Path folder) {
        Desk desk = begun(folder);
        commands().forEach(line -> desk.run(line + " --book farm").done());
        return desk;
    }

    /** The same, with as few openings of the book as can be. */
    static Desk quickly(Path folder) {
        Desk desk = begun(folder);
        StringBuilder run = new StringBuilder();
        for (String line : commands()) {
            if (line.startsWith("did ") && !line.contains("\n")) {
                run.append(line.substring(4)).append('\n');
                continue;
            }
            desk.typed(run.toString(), "did - --book farm").done();
            run.setLength(0);
            desk.run(line + " --book farm").done();
        }
        desk.typed(run.toString(), "did - --book farm").done();
        return desk;
    }

    /** The payload of an entry, as it is stored; of a correction, without the number it names. */
    static String payload(Entry entry) {
        try {
            JsonNode payload = JSON.readTree(Line.write(entry)).get("payload");
            if (payload.get("corrects") instanceof com.fasterxml.jackson.databind.node.ObjectNode named) {
                named.remove("number");
            }
            return entry.kind().name() + " " + payload;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private Season() {}
}

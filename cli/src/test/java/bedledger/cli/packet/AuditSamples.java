package bedledger.cli.packet;

import bedledger.ledger.packet.MemberNames;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Makes the packets of {@code audit-samples}, each with its page, into a folder.
 *
 * <p>{@code -Dtest=AuditSamplesTest -Dsamples=write} writes them anew into the tree; read the difference before it is committed.
 */
final class AuditSamples {
    static final String KEPT = "kept-checkpoint.txt";
    static final String FARM_KEY = "farm-key.txt";
    private static final String GOOD = "sample.key";

    /** How a sample is made of the farm's season. */
    private record Recipe(String keyResource, UnaryOperator<List<String>> season, UnaryOperator<Repacked> change) {}

    private static final Map<String, Recipe> RECIPES = new LinkedHashMap<>();

    static {
        RECIPES.put("good", honest(season -> season));
        RECIPES.put("changed-amount", changed(packet -> packet.mend(MemberNames.LINES, "\"80 kg\"", "\"95 kg\"")));
        RECIPES.put("missing-entry", changed(packet -> packet.lines(lines -> lines.remove(20))));
        RECIPES.put("swapped-entries", changed(packet -> packet.lines(lines -> Collections.swap(lines, 17, 18))));
        RECIPES.put(
                "truncated-tail",
                changed(packet ->
                        packet.lines(lines -> lines.subList(21, lines.size()).clear())));
        RECIPES.put("resigned-history", honest(replacing("--per-bed 60kg --source", "--per-bed 20kg --source")));
        RECIPES.put(
                "another-key",
                new Recipe(
                        "other.key",
                        replacing("--per-bed 60kg --source", "--per-bed 20kg --source"),
                        packet -> packet));
        RECIPES.put(
                "exchanged-document",
                changed(packet ->
                        packet.with(document(packet), "Long Meadow Seed, receipt 501\n60 g carrot, organic\n")));
        RECIPES.put("absent-document", changed(packet -> {
            packet.members().remove(document(packet));
            return packet;
        }));
        RECIPES.put("changed-finding", changed(AuditSamples::withoutFindingsNotMet));
        RECIPES.put(
                "unknown-kind",
                changed(packet -> packet.mend(MemberNames.LINES, "\"bed.residue-flailed\"", "\"bed.residue-burned\"")));
        RECIPES.put(
                "broken-interval",
                honest(replacing(
                        "--lot CAR-0812 --weighed topped --on 2025-08-12 --written 2025-08-12",
                        "--lot CAR-0812 --weighed topped --on 2025-07-14 --written 2025-07-14")));
        RECIPES.put("oversold-lot", honest(replacing("CAR-0812=80kg", "CAR-0812=118kg")));
        RECIPES.put(
                "late-entries",
                honest(season -> season.stream()
                        .map(line -> line.replaceAll("--written 2025-0[2-9]-[0-9]{2}", "--written 2025-12-30"))
                        .filter(line -> !line.equals("checkpoint"))
                        .toList()));
    }

    static List<String> names() {
        return List.copyOf(RECIPES.keySet());
    }

    private static Recipe honest(UnaryOperator<List<String>> season) {
        return new Recipe(GOOD, season, packet -> packet);
    }

    private static Recipe changed(UnaryOperator<Repacked> change) {
        return new Recipe(GOOD, season -> season, change);
    }

    private static UnaryOperator<List<String>> replacing(String wrong, String right) {
        return season -> {
            List<String> changed =
                    season.stream().map(line -> line.replace(wrong, right)).toList();
            if (changed.equals(season)) {
                throw new IllegalStateException("no line holds " + wrong);
            }
            return changed;
        };
    }

    private static String document(Repacked packet) {
        return packet.members().keySet().stream()
                .filter(MemberNames::isDocument)
                .findFirst()
                .orElseThrow();
    }

    private static Repacked withoutFindingsNotMet(Repacked packet) {
        return packet.mend(MemberNames.FINDINGS, "\"outcome\" : \"incomplete\"", "\"outcome\" : \"met\"");
    }

    private final Path scratch;

    AuditSamples(Path scratch) {
        this.scratch = scratch;
    }

    /** Makes all of them, their pages, and what lies beside them. */
    void into(Path folder) {
        try {
            for (Map.Entry<String, Recipe> each : RECIPES.entrySet()) {
                SampleFarm farm = farm(each.getKey(), each.getValue());
                Repacked packet = each.getValue().change().apply(Repacked.of(farm.packet()));
                packet.write(folder.resolve(each.getKey() + ".zip"));
                if (each.getKey().equals("good")) {
                    Files.copy(farm.file("kept.txt"), folder.resolve(KEPT));
                    Files.writeString(folder.resolve(FARM_KEY), farm.verifierKey() + "\n");
                }
            }
            Map<String, String> pages = pages();
            for (String name : names()) {
                String page = Objects.requireNonNull(pages.get(name), name);
                Files.writeString(folder.resolve(name + ".md"), page(name, page, folder));
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private SampleFarm farm(String name, Recipe recipe) throws IOException {
        Path desk = Files.createDirectories(scratch.resolve(name));
        return new SampleFarm(desk, recipe.keyResource()).season(recipe.season().apply(SampleFarm.season()));
    }

    /** The hand-written part of each page, from one text with a heading for each. */
    private static Map<String, String> pages() {
        Map<String, String> pages = new LinkedHashMap<>();
        for (String part : SampleFarm.text("sample-pages.txt").split("(?m)^=== ", -1)) {
            int end = part.indexOf('\n');
            if (end > 0) {
                pages.put(
                        part.substring(0, end).strip(), part.substring(end + 1).strip());
            }
        }
        return pages;
    }

    /** The page with what the program says behind each command that stands in it. */
    private static String page(String name, String text, Path folder) {
        StringBuilder page = new StringBuilder("# " + name + "\n\n");
        for (String line : text.lines().toList()) {
            page.append(line).append('\n');
            if (line.startsWith("    $ bedledger ")) {
                said(line.substring("    $ bedledger ".length()), folder)
                        .forEach(each ->
                                page.append(each.isEmpty() ? "" : "    " + each).append('\n'));
            }
        }
        return page.toString();
    }

    private static List<String> said(String command, Path folder) {
        List<String> words = new ArrayList<>();
        Function<String, String> key = word -> word.equals("\"$(cat " + FARM_KEY + ")\"") ? read(folder) : word;
        for (String word : command.split(" (?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)) {
            words.add(key.apply(word));
        }
        SampleFarm.Answer answer = SampleFarm.run(folder, words.toArray(String[]::new));
        List<String> lines = new ArrayList<>(answer.out().lines().toList());
        answer.err().lines().forEach(lines::add);
        lines.add("[exit code " + answer.exit() + "]");
        return lines;
    }

    private static String read(Path folder) {
        try {
            return Files.readString(folder.resolve(FARM_KEY), StandardCharsets.UTF_8)
                    .strip();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}

package bedledger.ledger.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import bedledger.ledger.journal.Journal;
import bedledger.ledger.json.CanonicalJson;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.Merkle;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What killed writers had acknowledged, by the hash of the payload they had sent, and what of it the book holds. */
final class Acknowledged {
    private static final Pattern TAG = Pattern.compile("batch (\\S+) ([0-9]+) of ([0-9]+) .*", Pattern.DOTALL);
    private final Map<Long, Hash> payloads = new HashMap<>();

    long entries() {
        return payloads.size();
    }

    /** Takes what a writer printed up to the last {@code done} into account. */
    void read(String printed, Tally tally) {
        List<String> reports = new ArrayList<>();
        Map<Long, Hash> commit = new HashMap<>();
        // The last piece has no line feed behind it: a line that was cut, or nothing.
        String[] lines = printed.split("\n", -1);
        for (int i = 0; i < lines.length - 1; i++) {
            String[] words = lines[i].split(" ", 2);
            switch (words[0]) {
                case "healed" -> reports.add(words[1]);
                case "entry" -> {
                    String[] entry = words[1].split(" ", 2);
                    commit.put(Long.valueOf(entry[0]), Merkle.leaf(entry[1].getBytes(UTF_8)));
                }
                case "done" -> {
                    payloads.putAll(commit);
                    tally.acknowledged += commit.size();
                    commit.clear();
                }
                case "ready" -> {}
                default -> throw new IllegalStateException("a writer said: " + lines[i]);
            }
        }
        tally.heal(reports);
    }

    /** Counts what is not there, is there with another payload, and commits of which only a part is there. */
    void compareWith(BookFolder folder, Tally tally) {
        Map<Long, Hash> missing = new HashMap<>(payloads);
        Map<String, Integer> members = new HashMap<>();
        Map<String, Integer> wholes = new HashMap<>();
        Journal.read(folder.journal(), 0, (offset, line) -> {
            JsonNode entry = CanonicalJson.readStrict(line);
            JsonNode payload = entry.path("payload");
            Hash sent = missing.remove(entry.path("number").longValue());
            if (sent != null && !sent.equals(Merkle.leaf(CanonicalJson.write(payload)))) {
                tally.changed++;
            }
            Matcher tag = TAG.matcher(payload.path("note").textValue());
            if (!tag.matches()) {
                throw new IllegalStateException("an entry that no writer wrote: " + entry);
            }
            members.merge(tag.group(1), 1, Integer::sum);
            wholes.put(tag.group(1), Integer.valueOf(tag.group(3)));
        });
        tally.lost += missing.size();
        tally.halfWritten += wholes.entrySet().stream()
                .filter(commit -> !commit.getValue().equals(members.get(commit.getKey())))
                .count();
    }
}

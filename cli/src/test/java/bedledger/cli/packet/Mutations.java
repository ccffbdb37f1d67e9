package bedledger.cli.packet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/** Ways to change a packet; each writes one and says what it did. */
final class Mutations {
    private static final List<String> TEXTS =
            List.of("lines.jsonl", "lines.jsonl", "findings.json", "returned.csv", "report.html");
    private static final List<String> SEALS = List.of("checkpoint.txt", "key.txt", "consistency.txt");

    private static final int MOST_OF_A_SMALL_ONE = 60_000;

    /** Bits and bytes of the zip itself. */
    static String ofBytes(byte[] whole, Path to, RandomGenerator random) throws IOException {
        byte[] bytes = whole.clone();
        int at = random.nextInt(bytes.length);
        String what;
        switch (random.nextInt(5)) {
            case 0 -> {
                what = "a bit of the zip at " + at;
                bytes[at] ^= (byte) (1 << random.nextInt(8));
            }
            case 1 -> {
                what = "a byte of the zip at " + at;
                bytes[at] = (byte) random.nextInt(256);
            }
            case 2 -> {
                what = "the zip cut at " + at;
                bytes = Arrays.copyOf(bytes, at);
            }
            case 3 -> {
                what = "a byte more in the zip at " + at;
                bytes = joined(Arrays.copyOf(bytes, at), new byte[] {(byte) random.nextInt(256)}, from(bytes, at));
            }
            default -> {
                // The directory and the headers are a small part of the file and would be met too seldom.
                int near = bytes.length - 1 - random.nextInt(900);
                what = "a bit of the zip's directory at " + near;
                bytes[near] ^= (byte) (1 << random.nextInt(8));
            }
        }
        Files.write(to, bytes);
        return what;
    }

    /** Files of the packet, then packed as it should be. */
    static String ofMembers(Map<String, byte[]> good, Path to, RandomGenerator random) {
        Map<String, byte[]> members = new LinkedHashMap<>(good);
        String what = switch (random.nextInt(8)) {
            case 0 -> bit(members, any(members, random), random);
            case 1 -> bit(members, SEALS.get(random.nextInt(SEALS.size())), random);
            case 2 -> lines(members, TEXTS.get(random.nextInt(TEXTS.size())), random);
            case 3 -> digit(members, TEXTS.get(random.nextInt(TEXTS.size())), random);
            case 4 -> digit(members, SEALS.get(random.nextInt(SEALS.size())), random);
            case 5 -> length(members, any(members, random), random);
            case 6 -> files(members, random);
            // Laying out the report for paper, which only a packet without a change comes to, takes a second.
            default ->
                random.nextInt(4) == 0
                        ? order(members, random)
                        : digit(members, TEXTS.get(random.nextInt(TEXTS.size())), random);
        };
        new Repacked(members).write(to);
        return what;
    }

    private static String any(Map<String, byte[]> members, RandomGenerator random) {
        List<String> names = List.copyOf(members.keySet());
        return names.get(random.nextInt(names.size()));
    }

    private static String bit(Map<String, byte[]> members, String name, RandomGenerator random) {
        byte[] bytes = content(members, name).clone();
        int at = random.nextInt(bytes.length);
        bytes[at] ^= (byte) (1 << random.nextInt(8));
        members.put(name, bytes);
        return "a bit of " + name + " at " + at;
    }

    private static String lines(Map<String, byte[]> members, String name, RandomGenerator random) {
        List<String> lines = new ArrayList<>(
                List.of(new String(content(members, name), StandardCharsets.UTF_8).split("(?<=\n)", -1)));
        int one = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        int way = random.nextInt(4);
        switch (way) {
            case 0 -> lines.remove(one);
            case 1 -> lines.add(other, lines.get(one));
            case 2 -> Collections.swap(lines, one, other);
            default -> lines.subList(one, lines.size()).clear();
        }
        members.put(name, String.join("", lines).getBytes(StandardCharsets.UTF_8));
        return "lines of " + name + ", way " + way + ", " + one + " and " + other;
    }

    private static String digit(Map<String, byte[]> members, String name, RandomGenerator random) {
        byte[] bytes = content(members, name).clone();
        int at = random.nextInt(bytes.length);
        while (!Character.isLetterOrDigit(bytes[at])) {
            at = (at + 1) % bytes.length;
        }
        bytes[at] = (byte) (Character.isDigit(bytes[at]) ? '0' + random.nextInt(10) : 'a' + random.nextInt(26));
        members.put(name, bytes);
        return "a sign of " + name + " at " + at;
    }

    private static String length(Map<String, byte[]> members, String name, RandomGenerator random) {
        byte[] bytes = content(members, name);
        int at = random.nextInt(bytes.length + 1);
        byte[] more = new byte[random.nextInt(4)];
        random.nextBytes(more);
        int skipped = Math.min(bytes.length, at + random.nextInt(4));
        members.put(name, joined(Arrays.copyOf(bytes, at), more, from(bytes, skipped)));
        return "bytes in or out of " + name + " at " + at;
    }

    private static String files(Map<String, byte[]> members, RandomGenerator random) {
        String one = any(members, random);
        String other = any(members, random);
        // What the writer of a packet would not write, too large a file, is among the hostile ones.
        boolean fits = Math.max(content(members, one).length, content(members, other).length) < MOST_OF_A_SMALL_ONE;
        if (!fits || random.nextBoolean()) {
            members.remove(one);
            return "without " + one;
        }
        byte[] kept = content(members, one);
        members.put(one, content(members, other));
        members.put(other, kept);
        return one + " and " + other + " exchanged";
    }

    private static String order(Map<String, byte[]> members, RandomGenerator random) {
        List<String> names = new ArrayList<>(members.keySet());
        Map<String, byte[]> shuffled = new LinkedHashMap<>();
        while (!names.isEmpty()) {
            String name = names.remove(random.nextInt(names.size()));
            shuffled.put(name, content(members, name));
        }
        members.clear();
        members.putAll(shuffled);
        return "files in another order";
    }

    private static byte[] content(Map<String, byte[]> members, String name) {
        return members.getOrDefault(name, new byte[0]);
    }

    private static byte[] from(byte[] bytes, int at) {
        return Arrays.copyOfRange(bytes, at, bytes.length);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    private Mutations() {}
}

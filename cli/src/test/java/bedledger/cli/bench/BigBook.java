package bedledger.cli.bench;

import static java.nio.charset.StandardCharsets.UTF_8;

import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.note.KeyFile;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.PacketZip;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Merkle;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Set;

/** A book of very many entries, its lines written straight to the journal and signed with a key that everybody knows; without a database. */
public final class BigBook {
    private static final int BEDS = 500;
    private static final String[] STEPS = {
        "\"crop.sown\",{\"beds\":[\"%1$s\"],\"crop\":\"lettuce\",\"doneBy\":\"owner\",\"doneOn\":\"%2$s\",\"placeInDay\":%4$d,\"quantity\":\"5 g\",\"rows\":3}",
        "\"care.weeded\",{\"beds\":[\"%1$s\"],\"doneBy\":\"owner\",\"doneOn\":\"%2$s\",\"placeInDay\":%4$d,\"tool\":\"stirrup hoe\"}",
        "\"care.weeded\",{\"beds\":[\"%1$s\"],\"doneBy\":\"owner\",\"doneOn\":\"%2$s\",\"placeInDay\":%4$d,\"tool\":\"wheel hoe\"}",
        "\"crop.harvested\",{\"beds\":[\"%1$s\"],\"crop\":\"lettuce\",\"doneBy\":\"owner\",\"doneOn\":\"%2$s\",\"last\":true,\"lot\":\"%3$s\",\"placeInDay\":%4$d,\"quantity\":\"41 kg\",\"weighed\":\"washed\"}",
        "\"lot.sold\",{\"as\":\"organic\",\"buyer\":\"Saturday market\",\"doneBy\":\"owner\",\"doneOn\":\"%2$s\",\"invoice\":\"%4$d\",\"lots\":[{\"lot\":\"%3$s\",\"quantity\":\"38 kg\"}],\"placeInDay\":%4$d}",
        "\"bed.residue-flailed\",{\"beds\":[\"%1$s\"],\"doneBy\":\"owner\",\"doneOn\":\"%2$s\",\"passes\":2,\"placeInDay\":%4$d}"
    };

    private final OutputStream out;
    private Frontier tree = Frontier.empty();
    private int place;

    private BigBook(OutputStream out) {
        this.out = out;
    }

    /** Arguments: the folder, how many entries, the key file. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        SigningKey key = KeyFile.load(Path.of(arguments[2])).key();
        try (OutputStream out =
                new BufferedOutputStream(Files.newOutputStream(folder.resolve("journal.jsonl")), 1 << 20)) {
            BigBook book = new BigBook(out);
            book.write(Long.parseLong(arguments[1]));
            Checkpoint head = new Checkpoint(key.verifier().name(), book.tree.size(), book.tree.root());
            Checkpoints.in(folder.resolve("checkpoints.txt")).append(key.sign(head.text()));
        }
        Files.createDirectories(folder.resolve("documents"));
        pack(folder, key);
        Files.writeString(folder.resolve("bedledger.book"), "bedledger book\nformat 1\nkey " + key.verifier() + "\n");
    }

    /** Lines, checkpoint and key as they are; what would be worked out from them is left blank, for the seal alone is measured. */
    private static void pack(Path folder, SigningKey key) throws IOException {
        Path packet = folder.resolve("seal.zip");
        Files.deleteIfExists(packet);
        try (FileChannel to =
                FileChannel.open(packet, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
            PacketZip zip = new PacketZip(to, LocalDate.of(1990, 1, 1).atStartOfDay());
            for (String name : MemberNames.ALWAYS) {
                zip.add(name, out -> {
                    switch (name) {
                        case MemberNames.LINES -> Files.copy(folder.resolve("journal.jsonl"), out);
                        case MemberNames.CHECKPOINT -> Files.copy(folder.resolve("checkpoints.txt"), out);
                        case MemberNames.KEY -> out.write((key.verifier() + "\n").getBytes(UTF_8));
                        default -> out.write('-');
                    }
                });
            }
            zip.finish();
        }
    }

    private void write(long entries) throws IOException {
        LocalDate day = LocalDate.of(1990, 1, 1);
        line(
                day,
                "\"book.opened\",{\"doneBy\":\"owner\",\"doneOn\":\"%s\",\"farm\":\"Bench\",\"placeInDay\":1,\"practice\":true,\"rules\":\"us\",\"timeZone\":\"UTC\",\"units\":\"metric\"}"
                        .formatted(day));
        line(
                day,
                "\"land.field-registered\",{\"doneBy\":\"owner\",\"doneOn\":\"%s\",\"field\":\"F\",\"gross\":\"2 ha\",\"placeInDay\":2}"
                        .formatted(day));
        for (int bed = 1; bed <= BEDS; bed++) {
            line(
                    day,
                    "\"land.bed-laid-out\",{\"beds\":[\"B%d\"],\"doneBy\":\"owner\",\"doneOn\":\"%s\",\"field\":\"F\",\"length\":\"25 m\",\"placeInDay\":%d,\"width\":\"0.75 m\"}"
                            .formatted(bed, day, bed + 2));
        }
        for (int round = 0; tree.size() < entries; round++) {
            for (String step : STEPS) {
                day = day.plusDays(7);
                place = 0;
                for (int bed = 1; bed <= BEDS && tree.size() < entries; bed++) {
                    place++;
                    line(day, step.formatted("B" + bed, day, day.getYear() + "/L" + round + "-" + bed, place));
                }
            }
        }
    }

    /** The name and payload, as in {@code "care.weeded",{…}}. */
    private void line(LocalDate day, String nameAndPayload) throws IOException {
        int comma = nameAndPayload.indexOf(',');
        long number = tree.size() + 1;
        Instant written = day.atTime(20, 0).toInstant(ZoneOffset.UTC);
        String line =
                "{\"act\":\"%s\",\"name\":%s,\"number\":%d,\"payload\":%s,\"revision\":1,\"sequence\":0,\"writtenAt\":\"%s.000Z\",\"writtenBy\":\"owner\"}"
                        .formatted(
                                "0194f217-4980-7000-8000-%012x".formatted(number),
                                nameAndPayload.substring(0, comma),
                                number,
                                nameAndPayload.substring(comma + 1),
                                written.toString().replace("Z", ""));
        byte[] bytes = line.getBytes(UTF_8);
        out.write(bytes);
        out.write('\n');
        tree = tree.append(Merkle.leaf(bytes));
    }
}

package bedledger.cli.packet;

import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.PacketZip;
import bedledger.ledger.packet.ZipMembers;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** The files of a packet taken out, changed, and packed again, as a cheat would. */
record Repacked(Map<String, byte[]> members) {
    private static final LocalDateTime TIME = LocalDateTime.of(2025, 12, 31, 20, 0);

    static Repacked of(Path packet) {
        Map<String, byte[]> members = new LinkedHashMap<>();
        try (ZipMembers zip = ZipMembers.open(packet)) {
            for (String name : zip.names()) {
                members.put(name, zip.bytes(name));
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return new Repacked(members);
    }

    String text(String name) {
        return new String(members.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
    }

    Repacked with(String name, String text) {
        members.put(name, text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    /** Puts one text in place of another, which must be there. */
    Repacked mend(String name, String wrong, String right) {
        if (!text(name).contains(wrong)) {
            throw new IllegalStateException(name + " does not hold " + wrong);
        }
        return with(name, text(name).replace(wrong, right));
    }

    /** Changes the list of lines. */
    Repacked lines(Consumer<List<String>> change) {
        List<String> lines = new ArrayList<>(text(MemberNames.LINES).lines().toList());
        change.accept(lines);
        return with(MemberNames.LINES, String.join("\n", lines) + "\n");
    }

    Path write(Path file) {
        try {
            Files.deleteIfExists(file);
            try (FileChannel to =
                    FileChannel.open(file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
                PacketZip zip = new PacketZip(to, TIME);
                for (Map.Entry<String, byte[]> member : members.entrySet()) {
                    zip.add(member.getKey(), out -> out.write(member.getValue()));
                }
                zip.finish();
            }
            return file;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}

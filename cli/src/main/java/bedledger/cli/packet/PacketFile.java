package bedledger.cli.packet;

import bedledger.cli.packet.InspectView.Inspected;
import bedledger.ledger.note.EntryProof;
import bedledger.ledger.packet.FolderMembers;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.Members;
import bedledger.ledger.packet.NotAPacket;
import bedledger.ledger.packet.ZipMembers;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Opens whatever was handed over: a packet, an unpacked one, or the proof of one entry. */
final class PacketFile {
    /** A line has at most 8 MiB; base64 makes it a third longer. */
    private static final int LARGEST_PROOF = 12 * 1024 * 1024;

    private static final int START = 64;
    private static final String TOO_LARGE = "too-large";

    static boolean isUnpacked(Path folder) {
        return Files.isRegularFile(folder.resolve(MemberNames.LINES));
    }

    static Inspected inspect(String name, Path path, Given given) {
        try {
            if (Files.isDirectory(path)) {
                return inspect(name, FolderMembers.open(path), given);
            }
            if (EntryProof.isOne(start(path, START))) {
                return EntryInspection.of(name, start(path, LARGEST_PROOF), given);
            }
            return inspect(name, ZipMembers.open(path), given);
        } catch (OutOfMemoryError tooLarge) {
            return refused(
                    name,
                    new Difference(
                            0,
                            0,
                            TOO_LARGE,
                            MemberNames.LINES,
                            "more than fits into this program's memory",
                            "less",
                            "Check the seal, which needs little: --seal-only"));
        } catch (NotAPacket broken) {
            return refused(name, Inspection.broken(broken));
        } catch (IOException failed) {
            return refused(
                    name,
                    Difference.in(
                            "the file", "unreadable", String.valueOf(failed.getMessage()), "a file that can be read"));
        }
    }

    private static Inspected inspect(String name, Members members, Given given) throws IOException {
        try (members) {
            return Inspection.of(name, members, given);
        }
    }

    private static byte[] start(Path path, int most) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(most);
        }
    }

    static boolean isTooLarge(Inspected one) {
        return one.disagreements().stream().anyMatch(found -> found.fault().equals(TOO_LARGE));
    }

    static Inspected refused(String name, Difference difference) {
        return new Inspected(
                name,
                "packet",
                null,
                false,
                false,
                0,
                0,
                null,
                null,
                false,
                0,
                List.of(),
                0,
                false,
                null,
                List.of(),
                List.of(),
                List.of(difference));
    }

    private PacketFile() {}
}

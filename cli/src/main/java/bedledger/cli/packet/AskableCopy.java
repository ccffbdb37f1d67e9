package bedledger.cli.packet;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.ledger.note.VerifierKey;
import bedledger.ledger.packet.FolderMembers;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.Members;
import bedledger.ledger.packet.ZipMembers;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.Ledger;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The record in a packet, laid into a new folder as a book that every question can be asked of; nobody signs there. */
final class AskableCopy {
    static void make(Path packet, Path into) {
        requireFree(into);
        try (Members members = Files.isDirectory(packet) ? FolderMembers.open(packet) : ZipMembers.open(packet)) {
            lay(members, new BookFolder(into));
            Ledger.rebuild(new BookFolder(into));
        } catch (IOException failed) {
            throw new Failure(
                    Exit.CANNOT_CREATE,
                    "The record could not be laid into '" + into + "': " + failed.getMessage()
                            + ". Choose another folder with --into, or make room on the disk.");
        }
    }

    private static void requireFree(Path into) {
        try {
            if (Files.exists(into) && (!Files.isDirectory(into) || holdsSomething(into))) {
                throw new Failure(
                        Exit.CANNOT_CREATE,
                        "'" + into + "' is there already and not empty; nothing was changed. Give a new folder.");
            }
        } catch (IOException failed) {
            throw new Failure(Exit.CANNOT_CREATE, "'" + into + "' cannot be looked into: " + failed.getMessage());
        }
    }

    private static boolean holdsSomething(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isPresent();
        }
    }

    private static void lay(Members members, BookFolder book) throws IOException {
        String key = new String(members.bytes(MemberNames.KEY), StandardCharsets.UTF_8).strip();
        try (InputStream lines = members.open(MemberNames.LINES)) {
            book.lay(VerifierKey.parse(key), lines, members.bytes(MemberNames.CHECKPOINT));
        }
        for (String name : members.names()) {
            if (MemberNames.isDocument(name)) {
                try (InputStream document = members.open(name)) {
                    Files.copy(document, book.root().resolve(name));
                }
            }
        }
    }

    private AskableCopy() {}
}

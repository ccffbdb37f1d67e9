package bedledger.ledger.packet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A packet that somebody unpacked: the files of a folder that have a packet's names; others are left alone. */
public final class FolderMembers implements Members {
    private final Path folder;
    private final Map<String, Long> sizes = new TreeMap<>(Comparator.naturalOrder());

    private FolderMembers(Path folder) {
        this.folder = folder;
    }

    /** Throws {@link NotAPacket} for a link or a file too large, other exceptions where the folder cannot be read. */
    public static FolderMembers open(Path folder) throws IOException {
        FolderMembers members = new FolderMembers(folder);
        members.take(folder, "");
        Path documents = folder.resolve(MemberNames.DOCUMENTS);
        if (Files.isDirectory(documents, LinkOption.NOFOLLOW_LINKS)) {
            members.take(documents, MemberNames.DOCUMENTS);
        }
        return members;
    }

    private void take(Path from, String prefix) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(from)) {
            for (Path file : files) {
                String name = prefix + file.getFileName();
                if (MemberNames.allowed(name)) {
                    sizes.put(name, sizeOf(file, name));
                }
            }
        }
    }

    private static long sizeOf(Path file, String name) throws IOException {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new NotAPacket(name, "a link or a folder", "a file");
        }
        long size = Files.size(file);
        if (size > MemberNames.most(name)) {
            throw new NotAPacket(name, size + " bytes", "at most " + MemberNames.most(name));
        }
        return size;
    }

    @Override
    public List<String> names() {
        return List.copyOf(sizes.keySet());
    }

    @Override
    public long size(String name) {
        return sizes.getOrDefault(name, 0L);
    }

    @Override
    public InputStream open(String name) throws IOException {
        return Files.newInputStream(folder.resolve(name), LinkOption.NOFOLLOW_LINKS);
    }

    @Override
    public void close() {}
}

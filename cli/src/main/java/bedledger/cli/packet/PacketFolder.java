package bedledger.cli.packet;

import bedledger.cli.Bedledger;
import bedledger.cli.packet.InspectView.Inspected;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;

/** Inspects the packets of many farms side by side; only as many are in memory as there are processors. */
final class PacketFolder {
    private static final int MOST_AT_ONCE = 4;

    private final Path folder;
    private final Given given;

    PacketFolder(Path folder, Given given) {
        this.folder = folder;
        this.given = given;
    }

    List<Inspected> inspect() {
        int atOnce = Math.min(MOST_AT_ONCE, Runtime.getRuntime().availableProcessors());
        ExecutorService workers = Executors.newFixedThreadPool(atOnce);
        try {
            List<Future<Inspected>> open = new ArrayList<>();
            for (Path file : packets()) {
                open.add(workers.submit(() -> inspect(file)));
            }
            List<Inspected> done = new ArrayList<>();
            for (Future<Inspected> one : open) {
                done.add(one.get());
            }
            return alone(done);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        } catch (ExecutionException failed) {
            throw new IllegalStateException(failed.getCause());
        } finally {
            workers.shutdownNow();
        }
    }

    /** Whatever a packet does to the program, the others are answered for. */
    private Inspected inspect(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            return PacketFile.inspect(name, file, given);
        } catch (RuntimeException | StackOverflowError failed) {
            return PacketFile.refused(
                    name,
                    Difference.in(
                            "the file",
                            "unreadable",
                            "something at which this program fails (" + SealCheck.shown(failed.toString()) + ")",
                            "a packet"));
        }
    }

    /** Side by side packets may want more memory than there is, of which each alone has enough. */
    private List<Inspected> alone(List<Inspected> done) {
        return done.stream()
                .map(one -> PacketFile.isTooLarge(one) ? inspect(folder.resolve(one.file())) : one)
                .toList();
    }

    private List<Path> packets() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> String.valueOf(file.getFileName())
                            .toLowerCase(Locale.ROOT)
                            .matches(".*\\.(zip|tlog-proof)"))
                    .sorted()
                    .toList();
        } catch (IOException failed) {
            throw Bedledger.unreadable(folder, failed);
        }
    }
}

package bedledger.cli.report;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** Writes a page and its paper side by side, and never over what is there: the name gets a number until it is free for both. */
final class ReportFile {
    /** Writes the content as it is made. */
    @FunctionalInterface
    interface Content {
        void write(Writer out) throws IOException;
    }

    /** Writes the paper as it is made. */
    @FunctionalInterface
    interface PaperContent {
        void write(OutputStream out) throws IOException;
    }

    /** What was written; no paper where none was wanted. */
    record Written(Path page, @Nullable Path paper) {}

    static Path write(Path wanted, Content content) {
        return write(wanted, content, null).page();
    }

    static Written write(Path wanted, Content content, @Nullable PaperContent paper) {
        try {
            Path parent = wanted.toAbsolutePath().getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            return firstFree(wanted, content, paper);
        } catch (IOException | UncheckedIOException failed) {
            throw new Failure(
                    Exit.CANNOT_CREATE,
                    "The report could not be written to '" + wanted + "': " + failed.getMessage()
                            + ". Choose another place with --out FILE, or make room on the disk.");
        }
    }

    private static Written firstFree(Path wanted, Content content, @Nullable PaperContent paper) throws IOException {
        Path file = wanted;
        for (int more = 2; ; more++) {
            Path beside = paper == null ? null : paper(file);
            if ((beside == null || !Files.exists(beside)) && written(file, content)) {
                if (beside != null && paper != null) {
                    fill(beside, paper);
                }
                return new Written(file, beside);
            }
            file = numbered(wanted, more);
        }
    }

    /** Whether the name was free, and the file is now written. */
    private static boolean written(Path file, Content content) throws IOException {
        try (Writer out = new BufferedWriter(
                Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW))) {
            content.write(out);
            return true;
        } catch (FileAlreadyExistsException taken) {
            return false;
        } catch (IOException | RuntimeException failed) {
            Files.deleteIfExists(file);
            throw failed;
        }
    }

    private static void fill(Path file, PaperContent content) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file, StandardOpenOption.CREATE_NEW))) {
            content.write(out);
        } catch (IOException | RuntimeException failed) {
            Files.deleteIfExists(file);
            throw failed;
        }
    }

    /** The page's name with the ending of a PDF. */
    private static Path paper(Path page) {
        String name = String.valueOf(page.getFileName());
        int dot = name.lastIndexOf('.');
        return page.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ".pdf");
    }

    private static Path numbered(Path wanted, int more) {
        String name = String.valueOf(wanted.getFileName());
        int dot = name.lastIndexOf('.');
        return dot <= 0
                ? wanted.resolveSibling(name + "-" + more)
                : wanted.resolveSibling(name.substring(0, dot) + "-" + more + name.substring(dot));
    }

    private ReportFile() {}
}

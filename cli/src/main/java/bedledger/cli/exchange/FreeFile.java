package bedledger.cli.exchange;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes a text to a file of the name wanted, or the next one with a number that is free: nothing is written over. */
public final class FreeFile {
    /** The file written. */
    public static Path write(Path wanted, String text) {
        Path file = wanted;
        for (int more = 2; ; more++) {
            try {
                Files.writeString(file, text, StandardOpenOption.CREATE_NEW);
                return file;
            } catch (FileAlreadyExistsException taken) {
                file = numbered(wanted, more);
            } catch (IOException failed) {
                throw new Failure(
                        Exit.CANNOT_CREATE,
                        "'" + file + "' could not be written: " + failed.getMessage()
                                + ". Choose another place, or make room on the disk.");
            }
        }
    }

    private static Path numbered(Path wanted, int number) {
        String name = String.valueOf(wanted.getFileName());
        int dot = name.lastIndexOf('.');
        return wanted.resolveSibling(
                dot > 0 ? name.substring(0, dot) + "-" + number + name.substring(dot) : name + "-" + number);
    }

    private FreeFile() {}
}

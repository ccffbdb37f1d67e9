package bedledger.cli.write;

import bedledger.cli.Bedledger;
import bedledger.cli.ContentHash;
import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.domain.Draft;
import bedledger.domain.Written;
import bedledger.language.BadValue;
import bedledger.language.BookKeeping;
import bedledger.language.DocumentId;
import bedledger.language.FactReader;
import bedledger.language.Head;
import bedledger.language.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/** {@code bedledger attach 31 receipt.pdf}: keeps a document with the book, and its content hash in the log. */
public final class Attach {
    private static final String HELP = """
            Usage: bedledger attach NUMBER FILE
            Keep a copy of a document (receipt, letter, photo) with the book, and its
            content hash in the log, so that it cannot be exchanged unseen.

            Example: bedledger attach 13 seed-receipt-502.pdf
            """;
    private final Surroundings around;

    public Attach(Surroundings around) {
        this.around = around;
    }

    public int run(List<String> typed) {
        List<String> arguments = new ArrayList<>(typed);
        if (WriteOptions.asksForHelp(arguments)) {
            around.out().println(HELP + "\n" + WriteOptions.HELP);
            return Exit.OK;
        }
        WriteOptions options = WriteOptions.takenFrom(arguments);
        if (arguments.size() != 2) {
            throw new Failure(Exit.USAGE, "Give the entry's number and one file.\n" + HELP);
        }
        long number = Correct.number(arguments.get(0));
        Path file = around.folder().resolve(arguments.get(1));
        String name = name(file);
        DocumentId document = hash(file);
        try (Writing writing = new Writing(around, options)) {
            if (writing.book().entry(number).isEmpty()) {
                throw new Failure(
                        Exit.REFUSED,
                        "There is no entry #" + number + "; the last is #"
                                + writing.book().size() + ".");
            }
            keep(file, writing.documents().resolve(document.toString()));
            Head head = Head.on(writing.days().today(), 0).by(writing.writer());
            BookKeeping.DocumentAttached fact = new BookKeeping.DocumentAttached(number, document, name);
            Written written = writing.write(List.of(new Draft(head, fact)));
            Echo.print(around, written, writing.book().zone());
            writing.seal();
        }
        return Exit.OK;
    }

    private static String name(Path file) {
        try {
            return (String) FactReader.parse(String.class, file.getFileName().toString());
        } catch (BadValue bad) {
            throw new Refused(List.of(bad.as("file")));
        }
    }

    private static DocumentId hash(Path file) {
        try {
            return ContentHash.of(file);
        } catch (NoSuchFileException missing) {
            throw new Failure(Exit.NO_INPUT, "There is no file '" + file + "'. Check the path.");
        } catch (IOException failed) {
            throw Bedledger.unreadable(file, failed);
        }
    }

    private static void keep(Path file, Path copy) {
        try {
            Files.createDirectories(copy.getParent());
            Path part = copy.resolveSibling(copy.getFileName() + ".part");
            Files.copy(file, part, StandardCopyOption.REPLACE_EXISTING);
            Files.move(part, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException failed) {
            throw new Failure(
                    Exit.IO, "The document could not be kept: " + failed.getMessage() + ". Nothing was written.");
        }
    }
}

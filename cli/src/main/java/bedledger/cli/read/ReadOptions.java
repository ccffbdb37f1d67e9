package bedledger.cli.read;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options of every command that reads. */
public final class ReadOptions {
    @Option(names = "--book", paramLabel = "FOLDER", description = "the book (else the one in this folder or above it)")
    @Nullable
    Path book;

    @Option(
            names = "--as-known-on",
            paramLabel = "DAY",
            description = "as the book stood at the end of that day: nothing written later counts")
    @Nullable
    String asKnownOn;

    @Option(names = "--json", description = "as JSON, by the schema of the same name")
    boolean json;

    @Option(names = "--csv", description = "as CSV, where it is a table")
    boolean csv;

    /** Whether a certain book, or a certain state of it, was asked for. */
    public boolean asksABook() {
        return book != null || asKnownOn != null;
    }

    /** Whether a program reads what is printed, which then leaves nothing out. */
    public boolean wantsData() {
        return json || csv;
    }

    /** For a command that prints JSON and reads no entries. */
    public static ReadOptions asJson() {
        ReadOptions options = new ReadOptions();
        options.json = true;
        return options;
    }

    /** The same for a command that has one form for each thing it hands out. */
    public static final class OfExport {
        @Option(
                names = "--book",
                paramLabel = "FOLDER",
                description = "the book (else the one in this folder or above it)")
        @Nullable
        Path book;

        @Option(
                names = "--as-known-on",
                paramLabel = "DAY",
                description = "as the book stood at the end of that day: nothing written later counts")
        @Nullable
        String asKnownOn;

        public ReadOptions reading() {
            ReadOptions options = new ReadOptions();
            options.book = book;
            options.asKnownOn = asKnownOn;
            return options;
        }
    }
}

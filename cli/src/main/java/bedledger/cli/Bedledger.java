package bedledger.cli;

import bedledger.language.Acts;
import bedledger.language.Refused;
import bedledger.language.Words;
import bedledger.ledger.journal.JournalBusy;
import bedledger.ledger.journal.JournalFailed;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.store.BookUnusable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The program: finds the command that was asked for, and turns whatever goes wrong into a sentence and an exit code. */
public final class Bedledger {
    public static final String VERSION = "0.1.0";
    private final Surroundings around;

    public Bedledger(Surroundings around) {
        this.around = around;
    }

    /** Runs one command line; returns the exit code. Opens no book for {@code --help} and {@code --version}. */
    public int run(String... args) {
        List<String> arguments = new ArrayList<>(List.of(args));
        boolean debug = arguments.remove("--debug");
        try {
            return dispatch(arguments);
        } catch (Refused refused) {
            around.err().println("Refused; nothing was written.");
            refused.problems().forEach(problem -> around.err().println("  " + problem));
            return debug(debug, refused, Exit.REFUSED);
        } catch (Failure failure) {
            around.err().println(failure.getMessage());
            return debug(debug, failure, failure.exit());
        } catch (JournalFailed failed) {
            around.err().println(failed.getMessage());
            return debug(debug, failed, failed instanceof JournalBusy ? Exit.BUSY : Exit.IO);
        } catch (BookUnusable unusable) {
            around.err().println(unusable.getMessage());
            boolean disk = unusable.getCause() != null
                    || String.valueOf(unusable.getMessage()).contains("read-only");
            return debug(debug, unusable, disk ? Exit.IO : Exit.NO_INPUT);
        } catch (NoteRejected rejected) {
            around.err().println(rejected.getMessage());
            return debug(debug, rejected, Exit.REFUSED);
        } catch (UncheckedIOException failed) {
            around.err().println(failed.getMessage());
            return debug(debug, failed, Exit.IO);
        } catch (InvalidPathException notAPath) {
            around.err().println("'" + notAPath.getInput() + "' cannot be the name of a file or folder.");
            return debug(debug, notAPath, Exit.USAGE);
        } catch (RuntimeException bug) {
            around.err()
                    .println(
                            "Something in the program went wrong that should not: " + bug
                                    + "\nNothing that was acknowledged is lost. Run the command again with --debug and send us what it prints.");
            return debug(debug, bug, Exit.INTERNAL);
        }
    }

    private int debug(boolean debug, Exception thrown, int code) {
        if (debug) {
            thrown.printStackTrace(around.err());
        }
        return code;
    }

    private int dispatch(List<String> arguments) {
        if (arguments.isEmpty() || List.of("--help", "-h", "help").contains(arguments.get(0))) {
            Help.print(around.out());
            return Exit.OK;
        }
        String name = arguments.remove(0);
        if (name.equals("--version")) {
            around.out().println("bedledger " + VERSION);
            return Exit.OK;
        }
        Optional<Command> command =
                Commands.ALL.stream().filter(known -> known.name().equals(name)).findFirst();
        return command.map(known -> known.make().apply(around).run(arguments)).orElseGet(() -> unknown(name));
    }

    private int unknown(String name) {
        if (Acts.byWord(name).isPresent()) {
            around.err().println("There is no command '" + name + "', but an act: bedledger did " + name + " …");
            return Exit.USAGE;
        }
        String nearest = Words.nearest(
                        name, Commands.ALL.stream().map(Command::name).toList())
                .map(word -> " Did you mean 'bedledger " + word + "'?")
                .orElse("");
        around.err().println("There is no command '" + name + "'." + nearest + " All commands: bedledger --help");
        return Exit.USAGE;
    }

    /** An unreadable file as a failure with a sentence. */
    public static Failure unreadable(java.nio.file.Path file, IOException why) {
        return new Failure(
                Exit.IO, "'" + file + "' could not be read: " + why.getMessage() + ". Check the path and your rights.");
    }
}

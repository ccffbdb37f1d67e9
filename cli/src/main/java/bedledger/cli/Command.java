package bedledger.cli;

import java.util.function.Function;

/**
 * One command of the program, made only when it is asked for.
 *
 * @param group the group under which the help lists it
 * @param says one line for the help
 * @param make makes the command's runner
 */
record Command(String name, String group, String says, Function<Surroundings, Runner> make) {
    /** Runs a command with what was typed after its name; returns the exit code. */
    @FunctionalInterface
    interface Runner {
        int run(java.util.List<String> arguments);
    }
}

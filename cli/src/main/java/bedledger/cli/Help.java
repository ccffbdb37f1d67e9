package bedledger.cli;

import java.io.PrintStream;

final class Help {
    static void print(PrintStream out) {
        out.println("""
                Bedledger keeps the record of a market garden: every field operation, once
                written, stays; what each bed got back and what a certifier asks is worked out
                from it.

                Usage: bedledger COMMAND [--book FOLDER] …      bedledger COMMAND --help
                """);
        String group = "";
        for (Command command : Commands.ALL) {
            if (!command.group().equals(group)) {
                group = command.group();
                out.println(group);
            }
            out.printf("  %-11s %s%n", command.name(), command.says());
        }
        out.println();
        out.print(Exit.LIST);
    }

    private Help() {}
}

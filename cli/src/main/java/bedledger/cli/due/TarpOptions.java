package bedledger.cli.due;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.projections.due.Asked;
import picocli.CommandLine.Option;

/** When a tarp is to be looked at: settings of whoever asks. */
final class TarpOptions {
    @Option(
            names = "--look",
            paramLabel = "WEEKS",
            defaultValue = "2",
            description = "a tarp is to be looked under after so many weeks (2)")
    int look;

    @Option(
            names = "--tarp-most",
            paramLabel = "WEEKS",
            defaultValue = "8",
            description = "a tarp that lies longer is named so (8)")
    int most;

    Asked.TarpWeeks weeks() {
        if (look < 1 || most < 1) {
            throw new Failure(Exit.USAGE, "--look " + look + " --tarp-most " + most + ": give one week or more.");
        }
        return new Asked.TarpWeeks(look, most);
    }
}
